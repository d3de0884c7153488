import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { HOUSE } from '../../src/workshop/house.mjs';
import { repositoryFiles } from './repositoryFiles';

const GUIDES = join(HOUSE, 'assets', 'guides');
/** What is said of things, in italics too, and what a button says with a letter put in. */
const NO_LABELS = /^(mirrored|Covered|Close|Lost in the dark|Only in [A-Z])$/;

const labels = readdirSync(GUIDES).flatMap((file) =>
  [...readFileSync(join(GUIDES, file), 'utf8').matchAll(/(?<![\w_])_([^_\n]+)_(?![\w_])/g)].map(
    ([, label]) => [file, label ?? ''] as const,
  ),
);

test('what a guide names in italics stands on the page, letter for letter', () => {
  const pages = repositoryFiles()
    .filter((path) => /^src\/(screens|exchange\/link)\/.*\.tsx?$/.test(path))
    .map((path) => readFileSync(join(HOUSE, path), 'utf8'));
  const named = labels.filter(([, label]) => !NO_LABELS.test(label));
  expect(named.length).toBeGreaterThan(10);
  const isThere = (label: string): boolean => {
    // Alone between quotes or elements, or the beginning of a sentence that says why.
    const alone = new RegExp(`(^|[>'"\`:]\\s*)${label}(\\s*[<'"\`:{.]|\\s*$)`, 'm');
    return pages.some((text) => alone.test(text));
  };
  expect(named.filter(([, label]) => !isThere(label))).toEqual([]);
});
