import { expect, test } from 'vitest';
import type { Bounds } from '../../../../src/screens/overhead/geometry/spots';
import { besideHand, buttonsBy, kept, legDrawing } from '../../../../src/screens/overhead/strokes/layout';

const PANE: Bounds = [0, 0, 700, 500];
const isWithin = ([left, top, right, bottom]: Bounds): boolean =>
  left >= 0 && top >= 0 && right <= PANE[2] && bottom <= PANE[3];
const areApart = (a: Bounds, b: Bounds): boolean =>
  a[2] <= b[0] || b[2] <= a[0] || a[3] <= b[1] || b[3] <= a[1];

test('the dimension stands under a level leg, its chip in the middle and the bays above', () => {
  const { chip, aside } = legDrawing([100, 100], [300, 100], { chip: 44, aside: 80 }, PANE);
  expect((chip[0] + chip[2]) / 2).toBe(200);
  expect((chip[1] + chip[3]) / 2).toBe(127);
  expect(aside[0]).toBe(200);
  expect(aside[1]).toBeLessThan(100);
});

test('beside an upright leg the chip and the bays leave the leg free, whichever way it was drawn', () => {
  for (const [from, to] of [
    [200, 400],
    [400, 200],
  ] as const) {
    const { chip, aside } = legDrawing([300, from], [300, to], { chip: 44, aside: 80 }, PANE);
    expect(chip[0]).toBeGreaterThan(300);
    expect(aside[0] + 40).toBeLessThan(300);
  }
});

test.each([
  [
    [690, 10],
    [690, 490],
  ],
  [
    [5, 495],
    [695, 495],
  ],
  [
    [2, 2],
    [30, 2],
  ],
  [
    [-200, 250],
    [900, 250],
  ],
] as const)('nothing of a leg from %j to %j is lettered outside of the pane', (from, to) => {
  const { chip, aside } = legDrawing(from, to, { chip: 60, aside: 90 }, PANE);
  expect(isWithin(chip)).toBe(true);
  expect(isWithin([aside[0] - 45, aside[1] - 7, aside[0] + 45, aside[1] + 7])).toBe(true);
});

test('words beside the hand stay in the pane in every corner of it, and clear of the chip', () => {
  for (const x of [0, 20, 350, 680, 700]) {
    for (const y of [0, 20, 250, 480, 500]) {
      const chip: Bounds = kept([x - 40, y + 16, x + 40, y + 38], PANE);
      const words = besideHand([x, y], { width: 160, lines: 2 }, [chip], PANE);
      expect(isWithin(words), `${x}, ${y}`).toBe(true);
      expect(areApart(words, chip), `${x}, ${y}`).toBe(true);
    }
  }
});

test('the buttons for a finger stand over the corner, and under it at the top of the pane', () => {
  expect(buttonsBy([350, 250], PANE)[3]).toBeLessThan(250);
  expect(buttonsBy([350, 20], PANE)[1]).toBeGreaterThan(20);
  expect(isWithin(buttonsBy([0, 500], PANE))).toBe(true);
});
