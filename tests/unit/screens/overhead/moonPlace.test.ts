import { expect, test } from 'vitest';
import { directionOf, type Vec3 } from '../../../../src/core/form/build/vector';
import type { Bounds } from '../../../../src/screens/overhead/geometry/spots';
import { moonPlace } from '../../../../src/screens/overhead/moon/moonPlace';

const ROOF: Bounds = [100, 100, 300, 200];
const moonAt = (headingDegrees: number, altitude: number) => {
  const way: Vec3 = directionOf(headingDegrees, altitude);
  return moonPlace({ way, lux: 0.2, sun: [0, -1, 0], lit: 1 }, ROOF);
};

test('the moon stands beside the roof, on its own bearing, and shines towards it', () => {
  const east = moonAt(90, 30);
  expect(east?.at[0]).toBeCloseTo(334, 6);
  expect(east?.at[1]).toBeCloseTo(150, 6);
  expect(east?.way[0]).toBeCloseTo(-1, 6);
  expect(east?.altitudeDegrees).toBeCloseTo(30, 6);
  const north = moonAt(0, 10);
  expect(north?.at[0]).toBeCloseTo(200, 6);
  expect(north?.at[1]).toBeCloseTo(66, 6);
  expect(moonAt(45, 90)).toBeNull();
});
