import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { HOUSE } from '../../src/workshop/house.mjs';

/** The files that git tracks and that are there, as paths below the root with forward slashes. */
export function trackedFiles(): string[] {
  return list([]);
}

/** The tracked files and those that git would track: a new file is checked before it is committed. */
export function repositoryFiles(): string[] {
  return list(['--cached', '--others', '--exclude-standard']);
}

function list(options: string[]): string[] {
  const listed = execFileSync('git', ['ls-files', '-z', ...options], { cwd: HOUSE, encoding: 'utf8' });
  return listed.split('\0').filter((path) => path !== '' && existsSync(join(HOUSE, path)));
}
