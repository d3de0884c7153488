import { expect, test } from 'vitest';
import { areaOf, isWithin } from '../../../src/core/plan/areas';
import { crosses } from '../../../src/core/plan/crossings';
import { alongOf, bearingOf, legsOf, runLength, spotAlong, spotFrom } from '../../../src/core/plan/runs';
import type { Spot } from '../../../src/core/plan/schema/numbers';

const ELL: readonly Spot[] = [
  [0, 0],
  [4, 0],
  [4, 3],
];

test.each([
  [[0, -1], 0],
  [[1, 0], 90],
  [[0, 1], 180],
  [[-1, 0], 270],
  [[1, -1], 45],
  [[0, 0], 0],
] as [Spot, number][])('from the middle to %j the bearing is %d degrees', (to, degrees) => {
  expect(bearingOf([0, 0], to)).toBeCloseTo(degrees, 10);
});

test('a place so far along a bearing, exact at quarter turns', () => {
  expect(spotFrom([1, 2], 90, 3)).toEqual([4, 2]);
  expect(spotFrom([1, 2], -180, 3)).toEqual([1, 5]);
  expect(spotFrom([0, 0], 30, 2)[0]).toBeCloseTo(1, 12);
});

test('a run is as long as its legs, and one more where it is closed', () => {
  expect(runLength(ELL, false)).toBe(7);
  expect(runLength(ELL, true)).toBe(12);
  expect(legsOf(ELL, true)).toHaveLength(3);
  expect(legsOf(ELL.slice(0, 2), true)).toHaveLength(1);
});

test('places along a run, and how far along they lie', () => {
  expect(spotAlong(ELL, false, 5)).toEqual({ spot: [4, 1], bearingDegrees: 180 });
  expect(spotAlong(ELL, false, -2)).toEqual({ spot: [0, 0], bearingDegrees: 90 });
  expect(spotAlong(ELL, false, 99).spot).toEqual([4, 3]);
  expect(spotAlong(ELL, true, 12).spot).toEqual([0, 0]);
  expect(spotAlong([[2, 2]], false, 1)).toEqual({ spot: [2, 2], bearingDegrees: 0 });
  expect(alongOf(ELL, false, [4.5, 1])).toBe(5);
  expect(alongOf(ELL, false, [2, -1])).toBe(2);
  // The leg back runs from [4, 3]; what lies nearest to [0, 3] on it is 3.2 m along.
  expect(alongOf(ELL, true, [0, 3])).toBeCloseTo(7 + 3.2, 9);
});

test('what lies inside an outline, and on its edge', () => {
  expect(isWithin(ELL, [3, 1])).toBe(true);
  expect(isWithin(ELL, [1, 2])).toBe(false);
  expect(isWithin(ELL, [2, 0])).toBe(true);
  expect(isWithin(ELL, [2, 0], false)).toBe(false);
  expect(areaOf(ELL)).toBe(6);
});

test('outlines that cross, and that only touch', () => {
  const moved = ELL.map(([x, z]): Spot => [x + 1, z - 1]);
  expect(crosses(ELL, moved)).toBe(true);
  expect(
    crosses(
      ELL,
      ELL.map(([x, z]): Spot => [x + 4, z]),
    ),
  ).toBe(false);
  expect(
    crosses(
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ],
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ],
    ),
  ).toBe(true);
});
