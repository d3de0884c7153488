import { expect, test } from 'vitest';
import { trackedFiles } from './repositoryFiles';

/** Why: whoever opens the repository sees the whole house at a glance, and what it is made of lives in its rooms. */
const ALLOWED = new Set([
  'README.md',
  'DEVELOPERS.md',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'src',
  'assets',
  'tests',
]);

test('the top level holds the few things it should, and dotfiles', () => {
  const names = new Set(trackedFiles().map((path) => path.split('/')[0] ?? path));
  expect(names).toContain('src');
  expect([...names].filter((name) => !ALLOWED.has(name) && !name.startsWith('.'))).toEqual([]);
});
