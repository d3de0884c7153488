import { expect, test } from 'vitest';
import { leaderPath } from '../../../../src/screens/frame/leaderPath';

/** A column with a foot to its left: the box around it is empty at its upper left. */
const STAND = [
  [300, 0],
  [310, 0],
  [310, 200],
  [240, 200],
  [240, 190],
  [300, 190],
] as const;
const AROUND = { left: 240, top: 0, width: 70, height: 200 };
const label = { left: 100, top: 50, width: 120, height: 38 };

test('a label’s line ends on the outline itself, not at the box around it', () => {
  expect(leaderPath(label, { outlines: [STAND], bits: [AROUND] }, [])).toBe('M220.0 60.0L300.0 60.0');
});

test('what has no outline is met at its box', () => {
  expect(leaderPath(label, { outlines: [], bits: [AROUND] }, [])).toBe('M220.0 60.0L240.0 60.0');
});

test('a line whose way words lie in begins beside the second line', () => {
  const words = [{ left: 250, top: 55, width: 30, height: 10 }];
  expect(leaderPath(label, { outlines: [STAND], bits: [AROUND] }, words)).toBe('M220.0 78.0L300.0 78.0');
});
