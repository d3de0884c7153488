import { Inflate } from 'fflate';
import { crc32 } from '../crc32';
import { type PackEntry, packedBytesOf } from './directory';
import { PackFault } from './packFault';

/** How much is handed to the inflater at a time: what it gives for that is the most that can come too much. */
const STEP_BYTES = 4096;

/**
 * A file of a pack, unpacked step by step and stopped where it gets larger than its directory says; its check has to
 * be right.
 * @throws PackFault that names the file
 */
export function unpackEntry(zip: Uint8Array, entry: PackEntry): Uint8Array<ArrayBuffer> {
  const shown = JSON.stringify(entry.name);
  const packed = packedBytesOf(zip, entry);
  const bytes = entry.isStored ? packed.slice() : inflated(packed, entry.bytes, shown);
  if (bytes.length !== entry.bytes)
    throw new PackFault(`${shown} in the pack has ${bytes.length} bytes, its directory says ${entry.bytes}.`);
  if (crc32(bytes) !== entry.crc) throw new PackFault(`${shown} in the pack is damaged: its check is wrong.`);
  return bytes;
}

function inflated(packed: Uint8Array, size: number, shown: string): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(size);
  let filled = 0;
  const inflate = new Inflate((chunk) => {
    if (filled + chunk.length > size)
      throw new PackFault(
        `${shown} in the pack unpacks to more than the ${size} bytes that its directory says.`,
      );
    bytes.set(chunk, filled);
    filled += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length; at += STEP_BYTES)
      inflate.push(packed.subarray(at, at + STEP_BYTES), at + STEP_BYTES >= packed.length);
  } catch (error) {
    if (error instanceof PackFault) throw error;
    throw new PackFault(`${shown} in the pack is damaged and cannot be unpacked.`);
  }
  return bytes.subarray(0, filled);
}
