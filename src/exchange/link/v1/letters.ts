const ONE_BYTE = 0x80;
const TWO_BYTES = 0x800;

/**
 * A string as bytes of which none is 0, one unit of UTF-16 after the other: what is written to it is read back, halves
 * of pairs and all. For most text these are the bytes of UTF-8.
 */
export function lettersOf(text: string): number[] {
  const bytes: number[] = [];
  for (let at = 0; at < text.length; at += 1) {
    const unit = text.charCodeAt(at);
    if (unit > 0 && unit < ONE_BYTE) bytes.push(unit);
    else if (unit < TWO_BYTES) bytes.push(0xc0 | (unit >> 6), 0x80 | (unit & 63));
    else bytes.push(0xe0 | (unit >> 12), 0x80 | ((unit >> 6) & 63), 0x80 | (unit & 63));
  }
  return bytes;
}

/** The string of such bytes; bytes that no string gives become some string. */
export function textOfLetters(bytes: readonly number[]): string {
  const units: string[] = [];
  const next = (at: number): number => (bytes[at] ?? 0) & 63;
  for (let at = 0; at < bytes.length; at += 1) {
    const byte = bytes[at];
    if (byte < 0xc0) units.push(String.fromCharCode(byte));
    else if (byte < 0xe0) units.push(String.fromCharCode(((byte & 31) << 6) | next(at + 1)));
    else units.push(String.fromCharCode(((byte & 15) << 12) | (next(at + 1) << 6) | next(at + 2)));
    if (byte >= 0xc0) at += byte < 0xe0 ? 1 : 2;
  }
  return units.join('');
}
