import { expect, test } from 'vitest';
import { PALETTE } from '../../../../src/core/kit/palette';
import { findEntries, inARow } from '../../../../src/screens/sheet/palette/findEntries';
import { type Cell, cellFrom } from '../../../../src/screens/sheet/palette/roving';

const idsFound = (search: string): readonly string[] =>
  findEntries(PALETTE, search).flatMap(({ entries }) => entries.map(({ id }) => id));

test('without a search every entry stands under its heading, once', () => {
  expect(idsFound('').toSorted()).toEqual(PALETTE.map(({ id }) => id).toSorted());
});

test('an entry is found by its word, by part of it, and by another word that it goes by', () => {
  expect(idsFound('mesh fence')).toContain('fence');
  expect(idsFound('  FEN ')).toContain('fence');
  expect(idsFound('chain link')).toContain('fence');
  expect(idsFound('chain link')).not.toContain('deck');
  expect(idsFound('no such thing')).toEqual([]);
});

test('words stand in a row without their capital, abbreviations keep theirs', () => {
  expect(inARow('Mesh fence')).toBe('mesh fence');
  expect(inARow('LED street lamp')).toBe('LED street lamp');
});

/** Two headings: three and two in rows of three, then four in rows of three. */
const CELLS: readonly Cell[] = [
  [0, 0],
  [100, 0],
  [200, 0],
  [0, 44],
  [100, 44],
  [0, 120],
  [100, 120],
  [200, 120],
  [0, 164],
].map(([left = 0, top = 0]) => ({ left, top }));

test.each([
  [0, 'ArrowRight', 1],
  [2, 'ArrowRight', 3],
  [3, 'ArrowLeft', 2],
  [0, 'ArrowLeft', null],
  [1, 'ArrowDown', 4],
  // Past the end of a short row to what is nearest in the next.
  [2, 'ArrowDown', 4],
  [4, 'ArrowDown', 6],
  [8, 'ArrowUp', 5],
  [7, 'ArrowUp', 4],
  [8, 'ArrowDown', null],
  [4, 'Home', 0],
  [4, 'End', 8],
  [4, 'x', null],
])('from cell %i %s leads to %s', (at, key, to) => {
  expect(cellFrom(CELLS, at, key)).toBe(to);
});
