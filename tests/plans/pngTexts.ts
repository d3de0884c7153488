import { crc32 } from 'node:zlib';

/** The text fields of a PNG, by keyword, read by walking its chunks; throws where one's check is wrong. */
export function textsOf(png: Buffer): Record<string, string> {
  const texts: Record<string, string> = {};
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const type = png.toString('latin1', at + 4, at + 8);
    const data = png.subarray(at + 8, at + 8 + length);
    if (crc32(png.subarray(at + 4, at + 8 + length)) !== png.readUInt32BE(at + 8 + length))
      throw new Error(`the check of ${type} at ${at} is wrong`);
    const end = data.indexOf(0);
    if (type === 'tEXt') texts[data.toString('latin1', 0, end)] = data.toString('latin1', end + 1);
    if (type === 'iTXt') texts[data.toString('latin1', 0, end)] = data.toString('utf8', end + 5);
    at += length + 12;
  }
  return texts;
}
