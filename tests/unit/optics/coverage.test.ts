import { expect, test } from 'vitest';
import { coverageOf } from '../../../src/core/optics/coverage';

test('a circle of the diagonal covers to the corner', () => {
  const found = coverageOf([24, 18], 30);
  expect(found.covers).toBe(true);
  expect(found.darkShare).toBe(0);
  expect(found.cutsAt).toEqual([1, 1]);
});

test('a circle as wide as the gate is high leaves what lies beside it', () => {
  // A disc of 24 mm in a gate of 36 × 24: 1 − π 12² ⁄ 864.
  const found = coverageOf([36, 24], 24);
  expect(found.covers).toBe(false);
  expect(found.darkShare).toBeCloseTo(1 - (Math.PI * 144) / 864, 9);
  expect(found.cutsAt).toEqual([0, 0]);
});

test('the dark corners are counted as a fine grid counts them', () => {
  for (const [width, height, circle] of [
    [36, 24, 31.1],
    [36, 24, 38],
    [24.9, 18.7, 27],
    [52.5, 23, 43.3],
    [10, 20, 21],
  ] as const) {
    const steps = 1500;
    let dark = 0;
    for (let k = 0; k < steps; k += 1) {
      for (let m = 0; m < steps; m += 1) {
        const [x, y] = [((k + 0.5) / steps - 0.5) * width, ((m + 0.5) / steps - 0.5) * height];
        if (x * x + y * y > (circle / 2) ** 2) dark += 1;
      }
    }
    expect(coverageOf([width, height], circle).darkShare).toBeCloseTo(dark / steps ** 2, 4);
  }
});

test('it says where the circle crosses the edges', () => {
  const { cutsAt } = coverageOf([36, 24], 40);
  // √(20² − 12²) = 16 of 18 along the width; the height's edge at 18 is crossed at √(20² − 18²) of 12.
  expect(cutsAt[0]).toBeCloseTo(16 / 18, 9);
  expect(cutsAt[1]).toBeCloseTo(Math.sqrt(76) / 12, 9);
});
