import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Manifest } from 'vite';

/** Where the build tells what it made of what, below its folder. */
export const MANIFEST = '.vite/manifest.json';

/** The names of the sources that the page's parts begin with, as the manifest has them. */
export const ENTRY = 'index.html';
export const CREW = 'screens/crew/CrewApp.tsx';
export const CREW_START = 'desk/crew/startCrew.ts';
export const DESK = 'screens/App.tsx';
export const DESK_START = 'desk/startDesk.ts';
export const STAGE = 'scene/Stage.tsx';
export const WALK = 'scene/walk/walkStage.ts';

/**
 * What the build made of what.
 * @param folder that the page was built into
 */
export function readManifest(folder: string): Manifest {
  const manifest: Manifest = JSON.parse(readFileSync(join(folder, MANIFEST), 'utf8'));
  return manifest;
}

/** Every file of the built page, below its folder with forward slashes, in the order of their names. */
export function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((path) => path !== MANIFEST)
    .sort();
}

/**
 * The scripts and styles that come with a source before any of it runs: itself and what it imports.
 * @param lazily whether to add all that it may import later
 * @throws an error when the build has no such source by itself
 */
export function comingWith(manifest: Manifest, source: string, lazily = false): ReadonlySet<string> {
  const seen = new Set<string>();
  const files = new Set<string>();
  const visit = (key: string): void => {
    if (seen.has(key)) return;
    seen.add(key);
    const chunk = manifest[key];
    if (!chunk) throw new Error(`the build made nothing of ${key} by itself`);
    for (const file of [chunk.file, ...(chunk.css ?? [])]) files.add(file);
    for (const next of chunk.imports ?? []) visit(next);
    // What several parts share may lie in the entry itself, which opens whichever of them the address asks for.
    if (lazily && key !== ENTRY) for (const next of chunk.dynamicImports ?? []) visit(next);
  };
  visit(source);
  return files;
}

/**
 * Adds what scripts name beside themselves: workers, decoders, and what these name in turn.
 * @param folder that the page was built into
 */
export function withNamed(folder: string, files: ReadonlySet<string>): ReadonlySet<string> {
  const candidates = filesBelow(folder).filter((path) => path.startsWith('assets/'));
  const found = new Set(files);
  // A set is walked to its end as it grows.
  for (const file of found) {
    if (!file.endsWith('.js')) continue;
    const text = readFileSync(join(folder, file), 'utf8');
    for (const path of candidates) {
      const isScript = /\.(css|js)$/.test(path) && !/worker/.test(path);
      if (!isScript && text.includes(path.slice('assets/'.length))) found.add(path);
    }
  }
  return found;
}
