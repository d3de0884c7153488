import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkNode } from './checkNode.mjs';
import { HOUSE } from './house.mjs';
import { run } from './run.mjs';

/**
 * Installs the packages of the lock file when they are missing or not the ones the lock names.
 * Compares names and versions rather than times, because a fresh checkout makes every file new.
 */
export function install() {
  checkNode();
  if (isInstalled()) return;
  console.error('Installing the packages of package-lock.json (once).');
  // Called by npm, its own script is run with this Node, which spares a search for npm on every system.
  const npm = process.env.npm_execpath;
  const installed = npm?.endsWith('.js')
    ? run(process.execPath, [npm, 'ci'])
    : run('npm', ['ci'], { shell: process.platform === 'win32' });
  if (installed) return;
  console.error('npm ci failed: read its message above, mend what it names, and run the same command again.');
  process.exit(1);
}

function isInstalled() {
  const wanted = readPackages(join(HOUSE, 'package-lock.json'));
  const found = readPackages(join(HOUSE, 'node_modules', '.package-lock.json'));
  if (!wanted || !found) return false;
  return Object.entries(wanted).every(([path, { version, optional }]) => {
    if (path === '') return true;
    const here = found[path];
    return here ? here.version === version : optional === true;
  });
}

/**
 * @param {string} lockFile
 * @returns {Record<string, { version?: string, optional?: boolean }> | null} null where there is no such file
 */
function readPackages(lockFile) {
  try {
    return JSON.parse(readFileSync(lockFile, 'utf8')).packages;
  } catch {
    return null;
  }
}
