import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/**
 * When the newest of these files and folders last changed, in milliseconds since 1970; 0 if none exists.
 * Folders count with their own times, so that a deleted or renamed file is noticed too.
 * @param {readonly string[]} paths files or folders, folders with all they hold
 * @returns {number}
 */
export function newestChange(paths) {
  let newest = 0;
  for (const path of paths) {
    const stats = statSync(path, { throwIfNoEntry: false });
    if (!stats) continue;
    newest = Math.max(newest, stats.mtimeMs);
    if (stats.isDirectory())
      newest = Math.max(newest, newestChange(readdirSync(path).map((name) => join(path, name))));
  }
  return newest;
}
