import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { SOURCES } from '../../src/core/sources';
import { HOUSE } from '../../src/workshop/house.mjs';
import { citedSources } from './citedSources';
import { repositoryFiles } from './repositoryFiles';

/** Why: a number that cannot say where it comes from cannot be checked by the person who has to trust it. */

const cited = new Map<string, string>();
for (const path of repositoryFiles().filter(mayCite))
  for (const key of citedSources(readFileSync(join(HOUSE, path), 'utf8'))) cited.set(key, path);

test('each cited source is in the bibliography', () => {
  const unknown = [...cited].filter(([key]) => !Object.hasOwn(SOURCES, key));
  expect(
    unknown.map(([key, path]) => `${path} cites [${key}], which src/core/sources.ts does not have`),
  ).toEqual([]);
});

test('each source of the bibliography is cited', () => {
  expect(Object.keys(SOURCES).filter((key) => !cited.has(key))).toEqual([]);
});

test('a citation is read from a docstring and from data', () => {
  expect(citedSources(' * Source: [field-size], [opencv-calib3d]\n')).toEqual([
    'field-size',
    'opencv-calib3d',
  ]);
  expect(citedSources("{ source: 'field-size', watts: 5 }")).toEqual(['field-size']);
  expect(citedSources('{ "source": "field-size" }')).toEqual(['field-size']);
  expect(
    citedSources("// Source: common practice, no source\nindex[i]; source: 'common practice, no source'"),
  ).toEqual([]);
});

/** Core and its tests cite, and data in assets; the tests of this checker hold examples. */
function mayCite(path: string): boolean {
  if (path === 'src/core/sources.ts' || path.startsWith('tests/architecture/')) return false;
  return /^(src|tests)\/.*\.tsx?$/.test(path) || /^assets\/.*\.json$/.test(path);
}
