/** One step for each byte's value, of the polynomial 0xedb88320. Source: [png] */
const STEPS = Uint32Array.from({ length: 256 }, (_, byte) => {
  let step = byte;
  for (let bit = 0; bit < 8; bit += 1) step = step & 1 ? (step >>> 1) ^ 0xedb88320 : step >>> 1;
  return step;
});

/** The CRC-32 of bytes, as zips, gzip and PNG have it: finds every change of up to 32 bits in a row. Source: [png] */
export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = STEPS[(sum ^ byte) & 0xff] ^ (sum >>> 8);
  return (sum ^ 0xffffffff) >>> 0;
}
