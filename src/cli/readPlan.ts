import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { parsePlanText } from '../core/plan/parse';
import type { Plan } from '../core/plan/schema/plan';
import { isZip } from '../exchange/planPack/directory';
import { CommandFault } from './fault';
import { fileProblem } from './fileProblem';

/** Larger than any plan; a film opened by mistake should not be read first. */
const LARGEST_BYTES = 64 * 1024 * 1024;

/** Reads a plan file. @throws CommandFault with a line for each thing that is wrong */
export function readPlan(file: string): Plan {
  const shown = JSON.stringify(file);
  const bytes = readFileBytes(file, LARGEST_BYTES, 'a plan file');
  if (isZip(bytes)) throw new CommandFault(`${shown} is a file pack: standclear open takes it apart.`);
  const parsed = parsePlanText(bytes.toString('utf8'));
  if (!parsed.ok) throw new CommandFault(...parsed.faults.map(({ sentence }) => `${shown}: ${sentence}`));
  return parsed.value;
}

/** Reads a file of at most so many bytes. @throws CommandFault that names it, and what was expected */
export function readFileBytes(file: string, most: number, expected: string): Buffer {
  const shown = JSON.stringify(file);
  let handle: number | null = null;
  try {
    handle = openSync(file, 'r');
    if (fstatSync(handle).isDirectory()) {
      throw new CommandFault(`${shown} is a folder, expected ${expected}.`);
    }
    const bytes = readAtMost(handle, most);
    if (!bytes) throw new CommandFault(`${shown} has more than ${most} bytes, expected ${expected}.`);
    return bytes;
  } catch (error) {
    if (error instanceof CommandFault) throw error;
    throw new CommandFault(`Cannot read ${shown}: ${fileProblem(error)}.`);
  } finally {
    if (handle !== null) closeSync(handle);
  }
}

const CHUNK_BYTES = 1024 * 1024;

/** What a file, a pipe or a device holds; null where that is more than `most` bytes: some never end. */
function readAtMost(handle: number, most: number): Buffer | null {
  const chunks: Buffer[] = [];
  for (let size = 0; size <= most; ) {
    const chunk = Buffer.alloc(CHUNK_BYTES);
    const read = readSync(handle, chunk);
    if (read === 0) return Buffer.concat(chunks);
    chunks.push(chunk.subarray(0, read));
    size += read;
  }
  return null;
}
