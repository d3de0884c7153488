import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { sentenceOf } from '../../../src/desk/reasonOf';
import { HOUSE } from '../../../src/workshop/house.mjs';

test('a trouble is one sentence, however its reason was thrown', () => {
  const trouble = (reason: unknown): string => sentenceOf('The plan was not saved', reason);
  for (const reason of ['the disk is full', 'The disk is full.', 'the disk is full. ', 'The disk is full'])
    expect(trouble(new Error(reason))).toBe('The plan was not saved: the disk is full.');
  expect(trouble('A disk is full')).toBe('The plan was not saved: a disk is full.');
  // What is a name, or all of capitals, keeps them.
  expect(trouble(new Error('IDBDatabase is closed'))).toBe('The plan was not saved: IDBDatabase is closed.');
  expect(trouble(new Error('HTTP 404'))).toBe('The plan was not saved: HTTP 404.');
  expect(trouble(new Error(''))).toBe('The plan was not saved.');
  expect(trouble(new Error('is it full?'))).toBe('The plan was not saved: is it full?');
});

test('no screen and no store puts a reason behind a colon by itself', () => {
  const found = ['src/desk', 'src/screens'].flatMap((folder) =>
    readdirSync(join(HOUSE, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name) && !/^reasonOf/.test(name))
      .map((name) => join(folder, name))
      .filter((name) => /: \$\{reasonOf\(|= reasonOf\(error\)/.test(readFileSync(join(HOUSE, name), 'utf8'))),
  );
  expect(found).toEqual([]);
});
