import { describe, expect, test } from 'vitest';
import { blurTangent, openShare, rimOf } from '../../../src/core/optics/bokeh';
import { blurMm } from '../../../src/core/optics/focus';

describe('the disc of a point out of focus', () => {
  test('is the pupil against the plane in focus: 100 mm at T2, focused at 2 m, a light far away', () => {
    // 50 mm of pupil over 2 m.
    expect(blurTangent({ focalMm: 100, stop: 2 }, 2, Number.POSITIVE_INFINITY)).toBeCloseTo(0.025, 12);
    // And one at 4 m half of it, one at 1 m as much again as the far one.
    expect(blurTangent({ focalMm: 100, stop: 2 }, 2, 4)).toBeCloseTo(0.0125, 12);
    expect(blurTangent({ focalMm: 100, stop: 2 }, 2, 1)).toBeCloseTo(0.025, 12);
    expect(blurTangent({ focalMm: 100, stop: 2 }, 2, 2)).toBe(0);
  });

  test('is the blur on the gate over the distance of the image', () => {
    const glass = { focalMm: 75, stop: 2.8 };
    for (const [focus, metres] of [
      [1.2, 8],
      [3, 0.9],
      [6, Number.POSITIVE_INFINITY],
    ]) {
      const imageMm = (75 * focus) / (focus - 0.075);
      expect(blurTangent(glass, focus, metres)).toBeCloseTo(blurMm(glass, focus, metres) / imageMm, 12);
    }
  });
});

describe('the rim that cuts it', () => {
  const lens = { widestStop: 2 };

  test('lets the whole pupil through on the axis, and everywhere two stops down', () => {
    const wide = rimOf(lens, 50, 2);
    expect(openShare(wide.radius, 0)).toBe(1);
    const closed = rimOf(lens, 50, 4);
    expect(openShare(closed.radius, closed.shift)).toBe(1);
    expect(openShare(closed.radius, closed.shift + 0.01)).toBeLessThan(1);
  });

  test('leaves at the edge of the circle, wide open, what two circles half a radius apart share', () => {
    const { radius, shift } = rimOf(lens, 50, 2);
    expect([radius, shift]).toEqual([1, 0.5]);
    // (2/π)(acos 1/4 − 1/4 √(1 − 1/16)), by hand.
    expect(openShare(radius, shift)).toBeCloseTo(0.68504, 4);
  });

  test('is as wide as the front, which cuts later and as far', () => {
    // 50 mm at T2 has a pupil of 25 mm; a front of 50 mm is twice as wide.
    const { radius, shift } = rimOf({ widestStop: 2, frontDiameterMm: 50 }, 50, 2);
    expect([radius, shift]).toEqual([2, 1.5]);
    expect(openShare(radius, 1)).toBe(1);
    expect(openShare(radius, shift)).toBeLessThan(0.8);
  });

  test('shares agree with counting points of the pupil', () => {
    for (const [radius, away] of [
      [1, 0.5],
      [1.4, 0.9],
      [0.6, 0.7],
      [0.5, 0.2],
      [2, 2.5],
      [1, 2.1],
    ]) {
      let [inside, all] = [0, 0];
      for (let y = -299; y < 300; y += 2)
        for (let x = -299; x < 300; x += 2) {
          if (x * x + y * y > 90000) continue;
          all += 1;
          if ((x / 300 - away) ** 2 + (y / 300) ** 2 <= radius * radius) inside += 1;
        }
      expect(openShare(radius, away)).toBeCloseTo(inside / all, 2);
    }
  });
});
