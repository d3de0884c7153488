import { describe, expect, test } from 'vitest';
import { cross, dot, type Vec3 } from '../../../src/core/form/build/vector';
import { aimedAt, keyAt, poseOf } from '../../../src/core/optics/pose';
import { projectPoint } from '../../../src/core/optics/project';
import type { CameraPose } from '../../../src/core/optics/types';
import type { Setup } from '../../../src/core/plan/schema/setup';

const close = (found: Vec3, expected: Vec3) => {
  for (let axis = 0; axis < 3; axis += 1) expect(found[axis]).toBeCloseTo(expected[axis], 12);
};

/** Where a point falls in a frame of 2 by 1 whose half width is one tangent. */
const placeOf = (pose: CameraPose, point: Vec3) => {
  const frame = { tanHalfWidth: 1, tanHalfHeight: 0.5, aspect: 2, distortion: null };
  const place = projectPoint({ pose, frame }, point);
  if (!place) throw new Error(`nothing of ${point} is in front of the camera`);
  return place;
};

describe('the axes of a camera', () => {
  test('heading 0 looks along −z, 90 along +x, 180 along +z, 270 along −x', () => {
    close(poseOf([0, 0, 0], 0, 0, 0).forward, [0, 0, -1]);
    close(poseOf([0, 0, 0], 90, 0, 0).forward, [1, 0, 0]);
    close(poseOf([0, 0, 0], 180, 0, 0).forward, [0, 0, 1]);
    close(poseOf([0, 0, 0], 270, 0, 0).forward, [-1, 0, 0]);
    close(poseOf([0, 0, 0], 90, 0, 0).right, [0, 0, 1]);
  });

  test('a pan to the right moves what stood in the middle to the left', () => {
    expect(placeOf(poseOf([0, 1, 0], 10, 0, 0), [0, 1, -5]).x).toBeLessThan(0.5);
  });

  test('tilt is positive upwards', () => {
    close(poseOf([0, 0, 0], 0, 90, 0).forward, [0, 1, 0]);
    close(poseOf([0, 0, 0], 0, 90, 0).up, [0, 0, 1]);
    expect(placeOf(poseOf([0, 1, 0], 0, 10, 0), [0, 1, -5]).y).toBeGreaterThan(0.5);
  });

  test('a camera rolled clockwise sees the horizon tip counter-clockwise: down on the left, up on the right', () => {
    const pose = poseOf([0, 1, 0], 0, 0, 10);
    const left = placeOf(pose, [-2, 1, -5]);
    const right = placeOf(pose, [2, 1, -5]);
    // y runs downwards: a larger one is lower in the picture.
    expect(left.y).toBeGreaterThan(0.5);
    expect(right.y).toBeLessThan(0.5);
    // By ten degrees, with a unit of x and one of y worth 2 and 1 tangents.
    const rise = (left.y - right.y) * 1;
    const run = (right.x - left.x) * 2;
    expect((Math.atan2(rise, run) * 180) / Math.PI).toBeCloseTo(10, 10);
  });

  test('right, up and forward are square to each other and right-handed about the back', () => {
    for (const [heading, tilt, roll] of [
      [0, 0, 0],
      [33, -20, 7],
      [-250, 61, -140],
      [359, -90, 90],
    ]) {
      const { right, up, forward } = poseOf([1, 2, 3], heading, tilt, roll);
      for (const axis of [right, up, forward]) expect(dot(axis, axis)).toBeCloseTo(1, 12);
      close(cross(right, up), [-forward[0], -forward[1], -forward[2]]);
    }
  });

  test('aiming at a point puts it in the middle of the picture', () => {
    const position: Vec3 = [3, 1.6, 4];
    for (const target of [
      [-2, 0.2, -7],
      [9, 5, 4.5],
      [3, 1.6, 20],
    ] as const) {
      const { headingDegrees, tiltDegrees } = aimedAt(position, target);
      const place = placeOf(poseOf(position, headingDegrees, tiltDegrees, 0), target);
      expect(place.x).toBeCloseTo(0.5, 12);
      expect(place.y).toBeCloseTo(0.5, 12);
    }
  });
});

const key = (atSeconds: number, x: number, headingDegrees: number): Setup['move']['keys'][number] => ({
  atSeconds,
  position: [x, 1, 0],
  headingDegrees,
  tiltDegrees: x,
  rollDegrees: -x,
});

describe('a camera on its move', () => {
  const linear: Setup['move'] = { ease: 'linear', keys: [key(2, 0, 350), key(4, 8, 370), key(5, 10, 360)] };
  const eased: Setup['move'] = { ...linear, ease: 'eased' };

  test('rests at its first key before it and at its last key after it', () => {
    expect(keyAt(linear, -3)).toEqual(linear.keys[0]);
    expect(keyAt(linear, 2)).toEqual(linear.keys[0]);
    expect(keyAt(linear, 5)).toEqual(linear.keys[2]);
    expect(keyAt(linear, 60)).toEqual(linear.keys[2]);
  });

  test('runs evenly between keys, pan through the numbers as written', () => {
    const half = keyAt(linear, 3);
    expect(half.position).toEqual([4, 1, 0]);
    expect(half.headingDegrees).toBe(360);
    expect(half.tiltDegrees).toBe(4);
    expect(half.rollDegrees).toBe(-4);
    expect(keyAt(linear, 4.5).position[0]).toBeCloseTo(9, 12);
    expect(keyAt(linear, 4.5).headingDegrees).toBeCloseTo(365, 12);
  });

  test('eased, it leaves and arrives gently and is half way at half time', () => {
    // 3u² − 2u³: 0.15625 at a quarter, 0.5 at a half, 0.84375 at three quarters.
    expect(keyAt(eased, 2.5).position[0]).toBeCloseTo(8 * 0.15625, 12);
    expect(keyAt(eased, 3).position[0]).toBeCloseTo(4, 12);
    expect(keyAt(eased, 3.5).position[0]).toBeCloseTo(8 * 0.84375, 12);
    const start = (keyAt(eased, 2.001).position[0] - keyAt(eased, 2).position[0]) / 0.001;
    expect(start).toBeLessThan(0.02);
  });

  test('passes its keys exactly', () => {
    for (const move of [linear, eased]) {
      for (const { atSeconds, position, headingDegrees } of move.keys) {
        expect(keyAt(move, atSeconds).position).toEqual(position);
        expect(keyAt(move, atSeconds).headingDegrees).toBe(headingDegrees);
      }
    }
  });

  test('a single key is a camera that stands', () => {
    const move: Setup['move'] = { ease: 'eased', keys: [key(3, 5, 90)] };
    for (const seconds of [0, 3, 9]) expect(keyAt(move, seconds)).toEqual(move.keys[0]);
  });
});
