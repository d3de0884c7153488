import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's root, wherever the command was called from. */
export const HOUSE = fileURLToPath(new URL('../..', import.meta.url));

/** Where the scripts keep what can be made again at any time. */
export const CACHE = join(HOUSE, 'node_modules', '.cache');

/** Everything that ends up in the page; a newer file in here makes the built page stale. */
export const PAGE_INPUTS = [
  'assets',
  'package-lock.json',
  'src/core',
  'src/exchange',
  'src/offline',
  'src/building',
  'src/desk',
  'src/scene',
  'src/screens',
  'src/index.html',
  'src/main.tsx',
  'src/vite.config.ts',
].map((path) => join(HOUSE, path));

/** Everything that ends up in the command line. */
export const COMMAND_INPUTS = [
  'assets',
  'package-lock.json',
  'src/core',
  'src/exchange',
  'src/cli',
  'src/workshop',
].map((path) => join(HOUSE, path));
