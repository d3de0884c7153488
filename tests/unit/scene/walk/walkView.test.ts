import { expect, test } from 'vitest';
import type { Vec3 } from '../../../../src/core/form/build/vector';
import { heightOnUpright, nearestOnSegment, onLevel } from '../../../../src/scene/walk/closeness';
import { viewFrom } from './views';

const close = (found: Vec3, expected: Vec3): void => {
  found.forEach((value, axis) => {
    expect(value).toBeCloseTo(expected[axis], 5);
  });
};

test('a ray through the pixel of a place goes through the place', () => {
  const view = viewFrom([3, 5, 9], [0, 1, 0]);
  for (const place of [
    [0, 0, 0],
    [2, 1.5, -3],
    [-4, 0.2, 1],
  ] as const) {
    const pixel = view.pixelOf(place);
    if (!pixel) throw new Error('the place lies before the eye');
    const [along, away] = nearestOnSegment(view.rayAt(pixel), place, place);
    expect(away).toBeLessThan(1e-6);
    expect(along).toBeCloseTo(Math.hypot(place[0] - 3, place[1] - 5, place[2] - 9), 5);
  }
});

test('what lies behind the eye has no pixel, and a line is cut where it passes behind', () => {
  const view = viewFrom([0, 2, 0], [0, 2, -5]);
  expect(view.pixelOf([0, 2, 3])).toBeNull();
  expect(view.segmentOf([1, 2, 3], [-1, 2, 8])).toBeNull();
  const cut = view.segmentOf([0.5, 2, -10], [0.5, 2, 10]);
  const [ahead] = view.segmentOf([0.5, 2, -10], [0.5, 2, -11]) ?? [];
  expect(cut?.[0]).toEqual(ahead);
  expect(cut?.[1][0]).toBeGreaterThan(800);
});

test('a metre is as many pixels as it looks', () => {
  const view = viewFrom([0, 2, 0], [0, 2, -5]);
  const [left, right] = [view.pixelOf([-0.5, 2, -8]), view.pixelOf([0.5, 2, -8])];
  if (!left || !right) throw new Error('both lie before the eye');
  expect((right[0] - left[0]) * view.metresPerPixelAt([0, 2, -8])).toBeCloseTo(1, 5);
});

test('a ray passes a piece where it is nearest, at its ends too, and along a piece of no length', () => {
  const ray = { origin: [0, 0, 0], direction: [0, 0, -1] } as const;
  const [along, away] = nearestOnSegment(ray, [2, -1, -5], [2, 1, -5]);
  expect([along, away]).toEqual([5, 2]);
  expect(nearestOnSegment(ray, [1, 1, -4], [1, 3, -4])).toEqual([4, Math.SQRT2]);
  expect(nearestOnSegment(ray, [0, 3, -7], [0, 3, -7])).toEqual([7, 3]);
  expect(nearestOnSegment(ray, [0, 0, 4], [0, 0, 4])).toEqual([0, 4]);
});

test('a height is read off an upright line, unless one looks down along it', () => {
  const view = viewFrom([4, 3, 4], [0, 1, 0]);
  const pixel = view.pixelOf([1, 2.25, -1]);
  if (!pixel) throw new Error('the place lies before the eye');
  expect(heightOnUpright(view.rayAt(pixel), [1, -1])).toBeCloseTo(2.25, 5);
  expect(heightOnUpright({ origin: [0, 9, 0], direction: [0, -1, 0] }, [0, 0])).toBeNull();
});

test('a ray meets a level below it, and none that it looks away from', () => {
  const ray = { origin: [0, 4, 0], direction: [0.6, -0.8, 0] } as const;
  const place = onLevel(ray, 0);
  if (!place) throw new Error('the ray looks down');
  close(place, [3, 0, 0]);
  expect(onLevel(ray, 5)).toBeNull();
  expect(onLevel({ origin: [0, 4, 0], direction: [1, 0, 0] }, 0)).toBeNull();
});
