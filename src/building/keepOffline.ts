import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'vite';
import type { KeptFile, KeptList } from '../offline/keptList';
import { CREW, CREW_START, comingWith, ENTRY, filesBelow, readManifest, withNamed } from './builtFiles.ts';

/** Beside the page, under one name for ever: see src/offline. */
const WORKER = 'offline.js';
const PAGE = 'index.html';
/** What the crew sheet needs and no script names. */
const CREW_ASSETS: readonly string[] = [
  PAGE,
  'manifest.webmanifest',
  'icons/icon.svg',
  'fonts/encode-sans-latin-standard-normal.woff2',
];

/** Fonts that only the pack asks for, a slice at a time, where names need one: all of them are some 20 MB. */
const SCRIPT_FONTS = /^assets\/noto-sans-[^/]+\.woff2?$/;

/** Writes the offline worker beside the built page, with the list of all files that it keeps. */
export function keepOffline(): Plugin {
  let folder = '';
  return {
    name: 'keep-offline',
    apply: 'build',
    configResolved: ({ root, build: { outDir } }) => {
      folder = resolve(root, outDir);
    },
    writeBundle: { sequential: true, order: 'post', handler: () => seal(folder) },
  };
}

/**
 * Names the build in a folder by what is in it, in its page and in its offline worker. A folder that was changed since
 * is another build.
 */
export async function seal(folder: string): Promise<void> {
  const page = join(folder, PAGE);
  const unnamed = readFileSync(page, 'utf8').replace(/\s*<meta name="build"[^>]*>/, '');
  writeFileSync(page, unnamed);
  const paths = filesBelow(folder).filter((path) => path !== WORKER);
  const name = createHash('sha256');
  for (const path of paths) name.update(`${path} ${integrityOf(folder, path)}\n`);
  const buildName = name.digest('hex').slice(0, 12);
  writeFileSync(
    page,
    unnamed.replace('</title>', `</title>\n    <meta name="build" content="${buildName}" />`),
  );
  writeFileSync(join(folder, WORKER), await workerWith(listOf(folder, paths, buildName)));
}

function listOf(folder: string, paths: readonly string[], buildName: string): KeptList {
  const manifest = readManifest(folder);
  const crew = new Set([
    ...CREW_ASSETS,
    ...comingWith(manifest, ENTRY),
    ...withNamed(folder, comingWith(manifest, CREW_START, true)),
    ...withNamed(folder, comingWith(manifest, CREW, true)),
  ]);
  for (const path of CREW_ASSETS)
    if (!paths.includes(path)) throw new Error(`the build has no ${path}, which the crew sheet needs`);
  const kept = (path: string): KeptFile => ({
    path,
    integrity: integrityOf(folder, path),
    isNamedByContent: path.startsWith('assets/'),
  });
  return {
    build: buildName,
    page: PAGE,
    crew: paths.filter((path) => crew.has(path)).map(kept),
    rest: paths.filter((path) => !crew.has(path) && !SCRIPT_FONTS.test(path)).map(kept),
  };
}

/** As browsers check it. */
function integrityOf(folder: string, path: string): string {
  return `sha384-${createHash('sha384')
    .update(readFileSync(join(folder, path)))
    .digest('base64')}`;
}

/** The offline worker as one script. */
async function workerWith(list: KeptList): Promise<string> {
  const built = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    define: { KEPT_LIST: JSON.stringify(list) },
    build: {
      write: false,
      target: 'es2022',
      rolldownOptions: {
        input: fileURLToPath(new URL('../offline/worker/offline.ts', import.meta.url)),
        output: { format: 'iife' },
      },
    },
  });
  const [result] = [built].flat();
  const chunk = result && 'output' in result ? result.output[0] : undefined;
  if (!chunk) throw new Error('the offline worker came out empty');
  return chunk.code;
}
