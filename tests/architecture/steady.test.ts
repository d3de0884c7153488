import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { HOUSE } from '../../src/workshop/house.mjs';
import { repositoryFiles } from './repositoryFiles';

/**
 * Engines differ in the last bit of these, from version to version: a report made in the page was once not the report
 * made in Node. In core they come from units/steadyMath.
 */
const UNSTEADY =
  /Math\.(?:a?sinh?|a?cosh?|a?tanh?|atan2|hypot|pow|exp|expm1|log|log2|log10|log1p|cbrt)\b|[^/*\s]\s\*\*=?\s/;

test('core works out angles, roots and powers the same everywhere', () => {
  const files = repositoryFiles().filter((file) => /^src\/core\/.*\.ts$/.test(file));
  expect(files.length).toBeGreaterThan(120);
  const offenders = files.flatMap((file) =>
    readFileSync(join(HOUSE, file), 'utf8')
      .split('\n')
      .flatMap((line, number) => (UNSTEADY.test(line) ? [`${file}:${number + 1}: ${line.trim()}`] : [])),
  );
  expect(offenders).toEqual([]);
});
