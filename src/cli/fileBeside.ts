import { createHash } from 'node:crypto';
import { readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Asset } from '../core/plan/schema/asset';

/** A name that stays in its folder: no way up, down or elsewhere. */
export const isPlainName = (name: string): boolean => !/[\\/\0]/.test(name) && name !== '.' && name !== '..';

/**
 * A file that a plan names, looked for by its name in the folder of the plan and taken only with the very contents that
 * the plan names; null where it is not there. What is there and is another file is told to `say`.
 */
export function fileBeside(
  { sha256, name, bytes: size }: Asset,
  planFile: string,
  say: (sentence: string) => void,
): Uint8Array<ArrayBuffer> | null {
  if (!isPlainName(name)) return null;
  const path = join(dirname(planFile), name);
  try {
    const found = statSync(path);
    if (!found.isFile()) return null;
    if (found.size === size) {
      const bytes = Uint8Array.from(readFileSync(path));
      if (createHash('sha256').update(bytes).digest('hex') === sha256) return bytes;
    }
    say(
      `${JSON.stringify(path)} is another file than the one that the plan was made with, and is left alone.`,
    );
  } catch {
    // Not there, or not to be opened: whoever asked says that it is missing.
  }
  return null;
}
