import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { distort, goodRadius, undistort } from '../../../src/core/optics/distortion';
import { poseOf } from '../../../src/core/optics/pose';
import { projectPoint } from '../../../src/core/optics/project';
import type { Distortion } from '../../../src/core/plan/schema/kit';

const coefficient = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const radialOnly: fc.Arbitrary<Distortion> = fc.record({
  k1: coefficient(0.5),
  k2: coefficient(0.3),
  k3: coefficient(0.1),
  p1: fc.constant(0),
  p2: fc.constant(0),
});
/** As lenses have them: the sideways terms are small beside the radial ones. */
const lens: fc.Arbitrary<Distortion> = fc.record({
  k1: coefficient(0.2),
  k2: coefficient(0.1),
  k3: coefficient(0.05),
  p1: coefficient(0.005),
  p2: coefficient(0.005),
});
const turn = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

const radialSlope = ({ k1, k2, k3 }: Distortion, r: number) =>
  1 + 3 * k1 * r ** 2 + 5 * k2 * r ** 4 + 7 * k3 * r ** 6;

describe('the radius up to which a lens is good', () => {
  test.prop([radialOnly, share])('the drawn radius rises everywhere within it', (bent, part) => {
    const limit = goodRadius(bent);
    expect(limit).toBeGreaterThan(0);
    expect(radialSlope(bent, limit * part * 0.999)).toBeGreaterThan(-1e-9);
  });

  test.prop([radialOnly])('just beyond it, if it ends at all, the drawn radius falls', (bent) => {
    const limit = goodRadius(bent);
    if (limit < 10) expect(radialSlope(bent, limit * 1.0001)).toBeLessThan(1e-3);
  });

  test('of k1 alone it is 1/√(−3 k1)', () => {
    const bent = { k1: -0.2, k2: 0, k3: 0, p1: 0, p2: 0 };
    expect(goodRadius(bent)).toBeCloseTo(1 / Math.sqrt(0.6), 10);
    expect(goodRadius({ ...bent, k1: 0.2 })).toBe(10);
  });

  test('beyond it nothing is projected and nothing is undone', () => {
    const bent = { k1: -0.2, k2: 0, k3: 0, p1: 0, p2: 0 };
    const limit = goodRadius(bent);
    const camera = {
      pose: poseOf([0, 0, 0], 0, 0, 0),
      frame: { tanHalfWidth: 1, tanHalfHeight: 1, aspect: 1, distortion: bent },
    };
    expect(projectPoint(camera, [limit * 0.99, 0, -1])).not.toBeNull();
    expect(projectPoint(camera, [limit * 1.01, 0, -1])).toBeNull();
    const [farthest] = distort(bent, limit, 0);
    expect(undistort(bent, farthest * 1.01, 0)).toBeNull();
    expect(undistort(bent, farthest * 0.99, 0)).not.toBeNull();
  });
});

describe('bending and straightening', () => {
  test.prop([lens, turn, share])('straightening undoes bending', (bent, angle, part) => {
    const radius = 0.9 * part * Math.min(1.2, goodRadius(bent));
    const [x, y] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    const straight = undistort(bent, ...distort(bent, x, y));
    expect(straight, `${x}, ${y}`).not.toBeNull();
    expect(Math.abs((straight?.[0] ?? Number.NaN) - x)).toBeLessThan(1e-9);
    expect(Math.abs((straight?.[1] ?? Number.NaN) - y)).toBeLessThan(1e-9);
  });

  test.prop([lens, turn, share])('bending undoes straightening', (bent, angle, part) => {
    const radius = 0.6 * part;
    const drawn = [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
    const straight = undistort(bent, ...drawn);
    if (!straight) {
      // Only where no direction is drawn: the farthest that the lens draws this way is nearer than that.
      const limit = goodRadius(bent);
      const [x, y] = distort(bent, limit * Math.cos(angle), limit * Math.sin(angle));
      expect(Math.hypot(x, y)).toBeLessThan(radius * 1.05);
      return;
    }
    const [x, y] = distort(bent, ...straight);
    expect(Math.abs(x - drawn[0])).toBeLessThan(1e-9);
    expect(Math.abs(y - drawn[1])).toBeLessThan(1e-9);
  });

  test.prop([lens])('the axis stays where it is', (bent) => {
    expect(distort(bent, 0, 0)).toEqual([0, 0]);
    expect(undistort(bent, 0, 0)).toEqual([0, 0]);
  });
});
