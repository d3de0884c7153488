import { expect, test } from 'vitest';
import { frameAround } from '../../../src/core/optics/frameAround';
import { poseOf } from '../../../src/core/optics/pose';

const camera = {
  pose: poseOf([3, 1.5, -2], 30, 0, 0),
  frame: { tanHalfWidth: 0.4, tanHalfHeight: 0.2, aspect: 2, distortion: null },
};
const HALVES = [0.8, 0.8] as const;
const looking = (headingDegrees: number, tiltDegrees = 0) =>
  frameAround(camera, poseOf([3, 1.5, -2], headingDegrees, tiltDegrees, 0), HALVES);

test('straight ahead the frame is a rectangle about the middle, by the ratio of the tangents', () => {
  const lines = looking(30);
  expect(lines).toHaveLength(4);
  const corners = lines.map(([from]) => from.map((value) => Math.round(value * 1e6) / 1e6));
  expect(corners).toEqual([
    [0.25, 0.375],
    [0.75, 0.375],
    [0.75, 0.625],
    [0.25, 0.625],
  ]);
});

test('turned to the right the frame goes to the left, looked up it goes down', () => {
  for (const [[x]] of looking(75)) expect(x).toBeLessThan(0.5);
  const middle = looking(30, 20).reduce((sum, [[, y]]) => sum + y / 4, 0);
  expect(middle).toBeGreaterThan(0.6);
});

test('behind the eye there is no frame, and what crosses its plane is cut', () => {
  expect(looking(210)).toEqual([]);
  const cut = looking(30 + 80);
  // The left edge is behind; the right one and what is left of the level ones are drawn.
  expect(cut).toHaveLength(3);
  for (const line of cut)
    for (const end of line) for (const value of end) expect(Number.isFinite(value)).toBe(true);
});
