const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const NO_DIGIT = 255;
const DIGITS = new Uint8Array(128).fill(NO_DIGIT);
for (let digit = 0; digit < 64; digit += 1) DIGITS[ALPHABET.charCodeAt(digit)] = digit;

/** Bytes in the 64 letters that an address carries as they are, without padding. RFC 4648, section 5, from memory. */
export function toBase64url(bytes: Uint8Array): string {
  const letters: string[] = [];
  for (let at = 0; at < bytes.length; at += 3) {
    const three = (bytes[at] << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    const count = Math.min(3, bytes.length - at) + 1;
    for (let letter = 0; letter < count; letter += 1)
      letters.push(ALPHABET[(three >> (18 - 6 * letter)) & 63]);
  }
  return letters.join('');
}

/** The bytes that a text of those letters stands for; null where it holds any other letter, or is one that no bytes give. */
export function fromBase64url(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let held = 0;
  let bits = 0;
  let length = 0;
  for (let at = 0; at < text.length; at += 1) {
    const digit = DIGITS[text.charCodeAt(at)] ?? NO_DIGIT;
    if (digit === NO_DIGIT) return null;
    held = ((held << 6) | digit) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[length] = held >> bits;
    length += 1;
  }
  return bytes;
}
