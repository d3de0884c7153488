import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as steady from '../../../../src/core/units/steadyMath';

/** Units in the last place by which two numbers differ, seen from the larger; tiny ones are held to 1e-17. */
const ulps = (a: number, b: number): number =>
  Math.abs(a - b) / Math.max(Number.EPSILON * Math.max(Math.abs(a), Math.abs(b)), 1e-17);

const within = (
  name: string,
  run: (x: number) => number,
  known: (x: number) => number,
  low: number,
  high: number,
) =>
  test(`${name} is the engine's own to four units in the last place`, () => {
    fc.assert(
      fc.property(fc.double({ min: low, max: high, noNaN: true }), (x) => {
        expect(ulps(run(x), known(x)), `${name}(${x})`).toBeLessThan(4);
      }),
      { numRuns: 3000 },
    );
  });

within('sin', steady.sin, Math.sin, -1000, 1000);
within('cos', steady.cos, Math.cos, -1000, 1000);
within('tan', steady.tan, Math.tan, -1.5, 1.5);
within('atan', steady.atan, Math.atan, -1e6, 1e6);
within('asin', steady.asin, Math.asin, -1, 1);
within('exp', steady.exp, Math.exp, -30, 30);
within('log', steady.log, Math.log, 1e-6, 1e6);
within('cbrt', steady.cbrt, Math.cbrt, 0, 1e9);

test('acos is the engine’s own to 1e-15', () => {
  fc.assert(
    fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (x) => {
      expect(Math.abs(steady.acos(x) - Math.acos(x))).toBeLessThan(1e-15);
    }),
  );
});

test('atan2 knows all four quarters and the axes', () => {
  for (const y of [-3, -1, -0.2, 0, 0.2, 1, 3]) {
    for (const x of [-3, -1, -0.2, 0, 0.2, 1, 3]) {
      expect(steady.atan2(y, x), `atan2(${y}, ${x})`).toBeCloseTo(Math.atan2(y, x), 15);
    }
  }
});

test('right angles come out whole where the engine has them whole', () => {
  expect(steady.sin(0)).toBe(0);
  expect(steady.cos(0)).toBe(1);
  expect(steady.sin(Math.PI / 2)).toBe(1);
  expect(Math.abs(steady.cos(Math.PI / 2))).toBeLessThan(1e-16);
  expect(steady.hypot(3, 4)).toBe(5);
  expect(steady.hypot(2, 3, 6)).toBe(7);
  expect(steady.pow(2, 0.5)).toBeCloseTo(Math.SQRT2, 14);
  expect(steady.pow(0, 2)).toBe(0);
});
