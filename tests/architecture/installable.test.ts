import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { HOUSE } from '../../src/workshop/house.mjs';

/**
 * Why: a browser that finds one thing wrong with the manifest offers no place on the home screen, and says nothing. The
 * page works from any folder of any server, so nothing in it may begin at the server's top.
 */
interface Manifest {
  readonly id: string;
  readonly start_url: string;
  readonly scope: string;
  readonly display: string;
  readonly icons: readonly { readonly src: string; readonly sizes: string; readonly purpose?: string }[];
}

const ASSETS = join(HOUSE, 'assets');
const manifest: Manifest = JSON.parse(readFileSync(join(ASSETS, 'manifest.webmanifest'), 'utf8'));

test('the manifest opens the page in its own folder, in a window of its own', () => {
  const { id, start_url, scope, display } = manifest;
  expect({ id, start_url, scope, display }).toEqual({
    id: './',
    start_url: './',
    scope: './',
    display: 'standalone',
  });
});

test('there are icons of 192 and 512 pixels and one to be cut to any shape, each as large as it says', () => {
  const drawn = manifest.icons.filter(({ src }) => src.endsWith('.png'));
  for (const { src, sizes } of drawn) {
    const { width, height } = PNG.sync.read(readFileSync(join(ASSETS, src)));
    expect(`${width}x${height}`).toBe(sizes);
  }
  expect(drawn.map(({ sizes, purpose = 'any' }) => `${sizes} ${purpose}`)).toEqual([
    '192x192 any',
    '512x512 any',
    '512x512 maskable',
  ]);
  expect(manifest.icons.every(({ src }) => existsSync(join(ASSETS, src)))).toBe(true);
});

test('nothing that is drawn on a maskable icon is cut away by a circle of four fifths of its width', () => {
  const { width, height, data } = PNG.sync.read(readFileSync(join(ASSETS, 'icons/icon-maskable-512.png')));
  const ground = [...data.subarray(0, 3)];
  let farthest = 0;
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const at = (y * width + x) * 4;
      if (ground.some((value, k) => value !== data[at + k]))
        farthest = Math.max(farthest, Math.hypot(x - width / 2, y - height / 2) / width);
    }
  expect(farthest).toBeGreaterThan(0.2);
  expect(farthest).toBeLessThan(0.4);
});
