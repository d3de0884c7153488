import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { CACHE, HOUSE } from './house.mjs';
import { newestChange } from './newestChange.mjs';

const ONE_HOUR_MS = 3_600_000;

/**
 * Bundles TypeScript entries for Node, packages left outside, unless a bundle of the same inputs is there already.
 * Each state of the inputs has a folder of its own, moved into place when finished, so that commands which run
 * side by side never see half a bundle.
 * @param {{ name: string, entries: Record<string, string>, inputs: readonly string[] }} what
 *   name: folder below the cache; entries: name of the bundle to its source below the root; inputs: what makes it stale
 * @returns {Promise<string>} the folder that holds one `.mjs` for each entry
 */
export async function bundle({ name, entries, inputs }) {
  const shelf = join(CACHE, name);
  const folder = join(shelf, String(newestChange(inputs)));
  if (existsSync(folder)) return folder;

  const { build } = await import('vite');
  const unfinished = join(shelf, `unfinished-${process.pid}`);
  await build({
    root: HOUSE,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    build: {
      ssr: true,
      target: 'node20',
      outDir: unfinished,
      emptyOutDir: true,
      minify: false,
      rolldownOptions: {
        input: Object.fromEntries(Object.entries(entries).map(([key, source]) => [key, join(HOUSE, source)])),
        output: { format: 'es', entryFileNames: '[name].mjs', chunkFileNames: 'parts/[name]-[hash].mjs' },
      },
    },
  });
  moveIntoPlace(unfinished, folder);
  return folder;
}

/**
 * @param {string} unfinished
 * @param {string} folder
 */
function moveIntoPlace(unfinished, folder) {
  mkdirSync(dirname(folder), { recursive: true });
  try {
    renameSync(unfinished, folder);
  } catch (error) {
    if (!existsSync(folder)) throw error;
    rmSync(unfinished, { recursive: true, force: true });
  }
  const shelf = dirname(folder);
  for (const old of readdirSync(shelf).map((entry) => join(shelf, entry))) {
    const age = Date.now() - (statSync(old, { throwIfNoEntry: false })?.mtimeMs ?? 0);
    // A younger one may still be running.
    if (old !== folder && age > ONE_HOUR_MS) rmSync(old, { recursive: true, force: true });
  }
}
