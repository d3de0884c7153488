import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  fitted,
  isBetterTurned,
  type Lying,
  moved,
  toPane,
  toRoof,
} from '../../../../../src/screens/crew/overhead/roofView';

const PANE = { width: 390, height: 420 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const lyings = fc.record({
  middle: fc.tuple(number(-50, 50), number(-50, 50)),
  perMetre: number(2, 100),
  turned: fc.boolean(),
});
const spots = fc.tuple(number(0, PANE.width), number(0, PANE.height));

test('what is under a finger comes back to its pixels', () => {
  fc.assert(
    fc.property(lyings, spots, (lying, spot) => {
      const [x, y] = toPane(lying, PANE, toRoof(lying, PANE, spot));
      expect(x).toBeCloseTo(spot[0], 6);
      expect(y).toBeCloseTo(spot[1], 6);
    }),
    { numRuns: 100 },
  );
});

test('what two fingers hold stays between them, and is as much larger as they went apart', () => {
  fc.assert(
    fc.property(lyings, spots, spots, number(0.5, 2), (lying, from, to, factor) => {
      const next = moved(lying, PANE, from, to, factor);
      const [x, y] = toPane(next, PANE, toRoof(lying, PANE, from));
      expect(x).toBeCloseTo(to[0], 6);
      expect(y).toBeCloseTo(to[1], 6);
      expect(next.perMetre).toBeCloseTo(lying.perMetre * factor, 9);
    }),
    { numRuns: 100 },
  );
});

test('a long roof is turned in a tall pane only, clockwise, and fits it', () => {
  const roof = [-12, -4, 12, 4] as const;
  expect(isBetterTurned(roof, { width: 390, height: 700 }, 18)).toBe(true);
  expect(isBetterTurned(roof, { width: 700, height: 390 }, 18)).toBe(false);
  expect(isBetterTurned([-5, -5, 5, 5], { width: 390, height: 700 }, 18)).toBe(false);
  const pane = { width: 390, height: 700 };
  const lying: Lying = fitted(roof, pane, 18, true);
  // 24 m along 700 − 36 pixels: 27.67 to the metre; the east end is at the foot, the north side at the right.
  expect(lying.perMetre).toBeCloseTo(664 / 24, 9);
  expect(toPane(lying, pane, [12, -4])[0]).toBeCloseTo(195 + (4 * 664) / 24, 9);
  expect(toPane(lying, pane, [12, -4])[1]).toBeCloseTo(682, 9);
});
