import { rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { MANIFEST } from './building/builtFiles.ts';
import { contentPolicy } from './building/contentPolicy.ts';
import { inParts } from './building/inParts.ts';
import { keepOffline } from './building/keepOffline.ts';
import { leanMethods } from './building/leanMethods.ts';
import { leanThree } from './building/leanThree.ts';

/** The guides and their pictures lie among the assets, and are no part of the page. */
function withoutGuides(): Plugin {
  let folders: readonly string[] = [];
  return {
    name: 'without-guides',
    apply: 'build',
    configResolved: ({ root, build }) => {
      folders = ['guides', 'pictures'].map((folder) => resolve(root, build.outDir, folder));
    },
    writeBundle: () => {
      for (const folder of folders) rmSync(folder, { recursive: true, force: true });
    },
  };
}

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  // Relative addresses, so that the built page works from any folder of any web server.
  base: './',
  publicDir: '../assets',
  plugins: [react(), leanThree(), leanMethods(), inParts(), contentPolicy(), withoutGuides(), keepOffline()],
  worker: { format: 'es' },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    // Browsers that cannot preload modules load them a little later by themselves.
    modulePreload: { polyfill: false },
    manifest: MANIFEST,
    target: 'es2022',
  },
});
