import { describe, expect, test } from 'vitest';
import { blurMm, depthOfField, hyperfocalMetres, usualCircleMm } from '../../../src/core/optics/focus';

const METRES_PER_FOOT = 0.3048;

describe('hyperfocal distance', () => {
  /**
   * Cameras and Lenses: the essential reference guide for filmmakers, slideplayer.com/amp/5823246: f = 50 mm,
   * c = 0.001 in, H = f²/(N c) in feet, read there. Ours counts the focal length too.
   */
  test.each([
    [1.4, 230.7],
    [2.8, 115.3],
    [4, 80.7],
    [8, 40.4],
    [16, 20.2],
  ])('of 50 mm at %s is %s ft', (stop, feet) => {
    const metres = hyperfocalMetres({ focalMm: 50, stop, circleMm: 0.0254 }) - 0.05;
    expect(Math.abs(metres / METRES_PER_FOOT - feet)).toBeLessThan(0.06);
  });
});

describe('depth of field', () => {
  /** Handbook form s(H − f)/(H + s − 2f) and s(H − f)/(H − s), worked by hand; the numbers are printed nowhere. */
  test.each([
    [50, 2.8, 0.025, 3000, 2771.1, 3270.1],
    [35, 2.8, 0.025, 4000, 3261.1, 5171.8],
    [85, 2, 0.025, 5000, 4835.5, 5176.1],
    [12, 2.8, 0.0127, 2000, 1341.5, 3928.7],
    [40, 2, 0.03, 3048, 2739.0, 3435.5],
    [75, 2.8, 0.025, 6000, 5588.0, 6477.6],
    [18, 4, 0.025, 1500, 1029.2, 2764.5],
  ])('of %s mm at %s, circle %s, focused at %s mm', (focalMm, stop, circleMm, focus, near, far) => {
    const depth = depthOfField({ focalMm, stop, circleMm }, focus / 1000);
    expect(Math.abs(depth.nearMetres * 1000 - near)).toBeLessThan(1);
    expect(Math.abs(depth.farMetres * 1000 - far)).toBeLessThan(1);
  });

  test('reaches from half the hyperfocal distance to infinity at it', () => {
    const glass = { focalMm: 40, stop: 2.8, circleMm: 0.025 };
    const h = hyperfocalMetres(glass);
    const depth = depthOfField(glass, h);
    expect(depth.farMetres).toBe(Number.POSITIVE_INFINITY);
    expect(depth.nearMetres).toBeCloseTo(h / 2, 9);
  });

  test('ends where the blur is as large as the circle, on both sides', () => {
    const glass = { focalMm: 65, stop: 2.8, circleMm: 0.025 };
    for (const focus of [1.2, 3, 7.5]) {
      const { nearMetres, farMetres } = depthOfField(glass, focus);
      expect(blurMm(glass, focus, nearMetres)).toBeCloseTo(0.025, 9);
      expect(blurMm(glass, focus, farMetres)).toBeCloseTo(0.025, 9);
    }
  });

  test('refuses a focus within the focal length', () => {
    expect(() => depthOfField({ focalMm: 100, stop: 2.8, circleMm: 0.025 }, 0.1)).toThrow(
      'depthOfField: focus at 0.1 m, expected more than the focal length, 0.1 m',
    );
  });
});

/** jukolart.us/cinematographic-systems/depth-of-field-calculations.html, read there: 35 mm 0.001 in, 16 mm 0.0006 in. */
test.each([
  [[24.892, 18.669], 0.025],
  [[22, 18.59], 0.025],
  [[12.52, 7.41], 0.015],
] as const)('the usual circle of a gate of %s mm is %s mm', (gate, circle) => {
  expect(usualCircleMm(gate)).toBe(circle);
});
