import { rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { MANIFEST } from './building/builtFiles.ts';
import { contentPolicy } from './building/contentPolicy.ts';
import { inParts } from './building/inParts.ts';
import { keepOffline } from './building/keepOffline.ts';
import { leanThree } from './building/leanThree.ts';

/** The README's pictures lie among the assets, and are no part of the page. */
function withoutPictures(): Plugin {
  let folder = '';
  return {
    name: 'without-pictures',
    apply: 'build',
    configResolved: ({ root, build }) => {
      folder = resolve(root, build.outDir, 'pictures');
    },
    writeBundle: () => rmSync(folder, { recursive: true, force: true }),
  };
}

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  // Relative addresses, so that the built page works from any folder of any web server.
  base: './',
  publicDir: '../assets',
  plugins: [react(), leanThree(), inParts(), contentPolicy(), withoutPictures(), keepOffline()],
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
