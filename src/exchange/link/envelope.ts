import { crc32 } from '../crc32';

const SUM_BYTES = 4;
const LENGTH_BITS = 7;
const MOST_LENGTH_BYTES = 4;

/** What is wrong with a link's bytes before anything in them is read. */
export type EnvelopeFault = 'cut' | 'altered';

/** Bytes with their length and their sum before them, so that a link that lost its end is told from one that was changed. */
export function enclosed(coded: Uint8Array): Uint8Array {
  const length: number[] = [];
  for (let rest = coded.length; length.length === 0 || rest > 0; rest >>>= LENGTH_BITS)
    length.push((rest & 127) | (rest >= 128 ? 128 : 0));
  const bytes = new Uint8Array(length.length + SUM_BYTES + coded.length);
  bytes.set(length);
  new DataView(bytes.buffer).setUint32(length.length, crc32(coded));
  bytes.set(coded, length.length + SUM_BYTES);
  return bytes;
}

/** The bytes that were enclosed, or what became of them on the way. */
export function disclosed(bytes: Uint8Array): Uint8Array | EnvelopeFault {
  let length = 0;
  let at = 0;
  for (let more = true; more; at += 1) {
    if (at === MOST_LENGTH_BYTES) return 'altered';
    if (at >= bytes.length) return 'cut';
    length |= (bytes[at] & 127) << (LENGTH_BITS * at);
    more = bytes[at] >= 128;
  }
  const coded = bytes.subarray(at + SUM_BYTES);
  if (bytes.length < at + SUM_BYTES || coded.length < length) return 'cut';
  if (coded.length > length) return 'altered';
  const sum = new DataView(bytes.buffer, bytes.byteOffset).getUint32(at);
  return sum === crc32(coded) ? coded : 'altered';
}
