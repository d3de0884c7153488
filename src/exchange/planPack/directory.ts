import { quoteFound } from '../../core/plan/faults';
import { PACK_LIMITS } from './limits';
import { PackFault } from './packFault';

/** A file of a zip as its directory has it. */
export interface PackEntry {
  readonly name: string;
  readonly isStored: boolean;
  readonly crc: number;
  readonly packedBytes: number;
  readonly bytes: number;
  /** Where its own header begins. */
  readonly at: number;
}

// Signatures and lengths of the format, from memory: APPNOTE, sections 4.3.7, 4.3.12 and 4.3.16.
const FILE_HEADER = 0x04034b50;
const DIRECTORY_ENTRY = 0x02014b50;
const DIRECTORY_END = 0x06054b50;
const FILE_HEADER_BYTES = 30;
const ENTRY_BYTES = 46;
const END_BYTES = 22;
const LONGEST_COMMENT = 0xffff;
const STORED = 0;
const DEFLATED = 8;
const ENCRYPTED = 1;
/** Numbers that are elsewhere, in the form for more than four gigabytes. */
const ELSEWHERE = 0xffffffff;

const viewOf = (zip: Uint8Array): DataView => new DataView(zip.buffer, zip.byteOffset, zip.byteLength);

/** Whether bytes begin as a zip does. */
export const isZip = (bytes: Uint8Array): boolean =>
  bytes.length >= 4 && viewOf(bytes).getUint32(0, true) === FILE_HEADER;

function endOf(zip: Uint8Array): number {
  const view = viewOf(zip);
  const last = zip.length - END_BYTES;
  for (let at = last; at >= 0 && at >= last - LONGEST_COMMENT; at -= 1)
    if (view.getUint32(at, true) === DIRECTORY_END) return at;
  throw new PackFault('The pack has no directory at its end: it was cut short, or is no zip file.');
}

/** A name that stays in its folder. @throws PackFault for any other */
function plainName(raw: Uint8Array): string {
  let name: string;
  try {
    name = new TextDecoder('utf-8', { fatal: true }).decode(raw);
  } catch {
    throw new PackFault('The pack has a file whose name is no text.');
  }
  const shown = quoteFound(name);
  if (name === '' || /[\p{Cc}\\:]/u.test(name))
    throw new PackFault(`The pack has a file called ${shown}, expected a plain name.`);
  if (name.startsWith('/'))
    throw new PackFault(`The pack has a file called ${shown}, which is no place within it.`);
  if (name.split('/').some((step) => step === '..' || step === '.'))
    throw new PackFault(`The pack has a file called ${shown}, which leads out of it.`);
  return name;
}

/**
 * Reads the directory of a zip and holds it to the limits of a file pack, before anything is unpacked.
 * @throws PackFault that says what is wrong with it
 */
export function readDirectory(zip: Uint8Array): readonly PackEntry[] {
  const end = endOf(zip);
  const view = viewOf(zip);
  const count = view.getUint16(end + 10, true);
  if (count > PACK_LIMITS.files)
    throw new PackFault(`The pack has ${count} files, expected at most ${PACK_LIMITS.files}.`);
  const entries: PackEntry[] = [];
  const names = new Set<string>();
  let at = view.getUint32(end + 16, true);
  let unpacked = 0;
  for (let k = 0; k < count; k += 1) {
    if (at + ENTRY_BYTES > end || view.getUint32(at, true) !== DIRECTORY_ENTRY)
      throw new PackFault('The directory of the pack is damaged.');
    const nameBytes = view.getUint16(at + 28, true);
    const name = plainName(zip.subarray(at + ENTRY_BYTES, at + ENTRY_BYTES + nameBytes));
    const entry = entryAt(view, at, name);
    if (names.has(name)) throw new PackFault(`The pack has two files called ${JSON.stringify(name)}.`);
    names.add(name);
    unpacked += entry.bytes;
    if (unpacked > PACK_LIMITS.unpackedBytes)
      throw new PackFault(
        `The files of the pack have more than ${PACK_LIMITS.unpackedBytes} bytes together, expected no more.`,
      );
    if (!name.endsWith('/')) entries.push(entry);
    at += ENTRY_BYTES + nameBytes + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  refuseOverlaps(entries);
  return entries;
}

function entryAt(view: DataView, at: number, name: string): PackEntry {
  const shown = JSON.stringify(name);
  const method = view.getUint16(at + 10, true);
  const packedBytes = view.getUint32(at + 20, true);
  const bytes = view.getUint32(at + 24, true);
  const place = view.getUint32(at + 42, true);
  if (view.getUint16(at + 8, true) & ENCRYPTED) throw new PackFault(`${shown} in the pack is encrypted.`);
  if (method !== STORED && method !== DEFLATED)
    throw new PackFault(`${shown} in the pack is packed by method ${method}, expected stored or deflated.`);
  if ([packedBytes, bytes, place].includes(ELSEWHERE))
    throw new PackFault(`${shown} in the pack is larger than four gigabytes, or says so.`);
  if (method === STORED && packedBytes !== bytes)
    throw new PackFault(
      `${shown} in the pack is stored as ${packedBytes} bytes, its directory says ${bytes}: expected as many.`,
    );
  if (bytes > PACK_LIMITS.ratio * packedBytes)
    throw new PackFault(
      `${shown} in the pack would unpack to more than ${PACK_LIMITS.ratio} times its size.`,
    );
  return {
    name,
    isStored: method === STORED,
    crc: view.getUint32(at + 16, true),
    packedBytes,
    bytes,
    at: place,
  };
}

/** Why: files that share their packed bytes make a small zip a huge one. */
function refuseOverlaps(entries: readonly PackEntry[]): void {
  const ordered = [...entries].sort((a, b) => a.at - b.at);
  ordered.forEach((entry, k) => {
    const next = ordered[k + 1];
    if (next && entry.at + FILE_HEADER_BYTES + entry.packedBytes > next.at)
      throw new PackFault(
        `${JSON.stringify(entry.name)} and ${JSON.stringify(next.name)} lie over each other in the pack.`,
      );
  });
}

/** The packed bytes of a file. @throws PackFault where the pack does not have them */
export function packedBytesOf(zip: Uint8Array, { name, at, packedBytes }: PackEntry): Uint8Array {
  const view = viewOf(zip);
  const isThere = at + FILE_HEADER_BYTES <= zip.length && view.getUint32(at, true) === FILE_HEADER;
  const begins = isThere
    ? at + FILE_HEADER_BYTES + view.getUint16(at + 26, true) + view.getUint16(at + 28, true)
    : Number.POSITIVE_INFINITY;
  if (begins + packedBytes > zip.length)
    throw new PackFault(`${JSON.stringify(name)} is not where the pack’s directory says.`);
  return zip.subarray(begins, begins + packedBytes);
}
