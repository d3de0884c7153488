import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { HOUSE } from '../../src/workshop/house.mjs';
import { repositoryFiles } from './repositoryFiles';

/** Why: each of these is a thing left lying: a path of one person's machine, work put off, a check switched off. */
const UNWANTED: Readonly<Record<string, RegExp>> = {
  'a path of one machine': /\/(work|tmp)\//,
  'a folder that the repository does not have': /(^|[\s`'"(])shared\//m,
  'work put off': /\b(TODO|FIXME|XXX|HACK)\b/,
  'a check switched off': /eslint-disable|biome-ignore|@ts-(ignore|expect-error|nocheck)/,
};

const texts = repositoryFiles()
  .filter((path) => /\.(ts|tsx|mjs|css|html|md|json)$|^\.ci\//.test(path))
  .filter((path) => path !== 'package-lock.json' && path !== 'tests/architecture/words.test.ts')
  .map((path) => ({ path, text: readFileSync(join(HOUSE, path), 'utf8') }));

test.each(Object.entries(UNWANTED))('no file holds %s', (_, pattern) => {
  expect(texts.length).toBeGreaterThan(0);
  const found = texts.flatMap(({ path, text }) => {
    const line = text.split('\n').findIndex((each) => pattern.test(each));
    return line < 0 ? [] : [`${path}:${line + 1}`];
  });
  expect(found).toEqual([]);
});
