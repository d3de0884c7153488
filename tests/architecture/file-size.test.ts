import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { HOUSE } from '../../src/workshop/house.mjs';
import { repositoryFiles } from './repositoryFiles';

/** Why: files grow at the front door, a few lines at a time, and nobody splits one that already has a thousand. */
const LINES_AT_MOST = 400;

test(`no source file has more than ${LINES_AT_MOST} lines`, () => {
  const sources = repositoryFiles().filter((path) => /^src\/.*\.(ts|tsx|mjs|css|html)$/.test(path));
  expect(sources.length).toBeGreaterThan(0);
  const lengths = sources.map((path) => ({
    path,
    lines: readFileSync(join(HOUSE, path), 'utf8').trimEnd().split('\n').length,
  }));
  expect(lengths.filter(({ lines }) => lines > LINES_AT_MOST)).toEqual([]);
});
