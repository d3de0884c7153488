import { fc, test } from '@fast-check/vitest';
import { expect } from 'vitest';
import { type ClearGrid, wayFrom, waysTo } from '../../../src/core/cautions/ways/clearGrid';

const COLUMNS = 9;
const ROWS = 7;
const SQUARES = COLUMNS * ROWS;

const gridOf = (clear: readonly number[]): ClearGrid => ({
  left: 0,
  top: 0,
  columns: COLUMNS,
  rows: ROWS,
  step: 0.1,
  clear: Float32Array.from(clear),
});

const step = (from: number, to: number): number => {
  const columns = Math.abs((from % COLUMNS) - (to % COLUMNS));
  const rows = Math.abs(Math.floor(from / COLUMNS) - Math.floor(to / COLUMNS));
  return columns + rows === 0 || columns > 1 || rows > 1
    ? Number.POSITIVE_INFINITY
    : columns + rows === 1
      ? 5
      : 7;
};

/** The lengths of the shortest ways in the plain way: round after round over all squares until none gets shorter. */
function plainly({ clear }: ClearGrid, goals: readonly number[], least: number): readonly number[] {
  const lengths = Array.from({ length: SQUARES }, (_, square) =>
    goals.includes(square) && clear[square] >= least ? 0 : Number.POSITIVE_INFINITY,
  );
  for (let isSettled = false; !isSettled; ) {
    isSettled = true;
    for (let to = 0; to < SQUARES; to += 1)
      for (let from = 0; from < SQUARES; from += 1) {
        const length = lengths[from] + step(from, to);
        if (clear[to] < least || length >= lengths[to]) continue;
        lengths[to] = length;
        isSettled = false;
      }
  }
  return lengths;
}

test.prop([
  fc.array(fc.constantFrom(0.1, 0.3, 0.5, 0.5), { minLength: SQUARES, maxLength: SQUARES }),
  fc.array(fc.integer({ min: 0, max: SQUARES - 1 }), { maxLength: 3 }),
  fc.constantFrom(0.2, 0.4),
])(
  'every way over what is clear is the shortest that there is, and leads to a goal',
  (clear, goals, least) => {
    const grid = gridOf(clear);
    const next = waysTo(grid, goals, least);
    const lengths = plainly(grid, goals, least);
    for (let square = 0; square < SQUARES; square += 1) {
      expect(next[square] >= 0).toBe(lengths[square] < Number.POSITIVE_INFINITY);
      if (next[square] < 0) continue;
      const way = wayFrom(next, square);
      expect(goals).toContain(way[way.length - 1]);
      expect(way.slice(1).reduce((sum, to, k) => sum + step(way[k], to), 0)).toBe(lengths[square]);
    }
  },
);
