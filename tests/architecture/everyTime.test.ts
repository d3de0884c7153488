import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { EVERY_TIME, PICTURES_EVERY_TIME } from '../everyTime';

const browserTests = fileURLToPath(new URL('../browser', import.meta.url));

test('each browser test of every run is there', () => {
  const files = [
    ...EVERY_TIME.map((name) => `${name}.test.ts`),
    ...PICTURES_EVERY_TIME.map((name) => `${name}.picture.test.ts`),
  ];
  expect(files.filter((name) => !existsSync(`${browserTests}/${name}`))).toEqual([]);
  expect(new Set(files).size).toBe(files.length);
});
