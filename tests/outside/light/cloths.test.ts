import { describe, expect, test } from 'vitest';
import { dot, type Vec3 } from '../../../src/core/form/build/vector';
import { illuminance } from '../../../src/core/light/illuminance';
import { lightScene } from '../../../src/core/light/lightScene';
import { polygonLight } from '../../../src/core/light/polygonLight';
import type { Gear } from '../../../src/core/plan/schema/gear';
import { darkRoof, flagAt, lampAt } from '../../plans/darkRoof';

/** A rectangle a by b, one corner at the origin, in the plane y = c. */
const rectangle = (a: number, b: number, c: number): Vec3[] => [
  [0, c, 0],
  [a, c, 0],
  [a, c, b],
  [0, c, b],
];

/** Factor from an element below a corner of a rectangle and parallel to it. Source: [form-factors] */
function parallelFactor(a: number, b: number, c: number): number {
  const [x, y] = [a / c, b / c];
  const [rootX, rootY] = [Math.sqrt(1 + x * x), Math.sqrt(1 + y * y)];
  return ((x / rootX) * Math.atan(y / rootX) + (y / rootY) * Math.atan(x / rootY)) / (2 * Math.PI);
}

/**
 * Factor from an element in a plane that meets a rectangle's plane at a right angle, at the corner's foot: the
 * rectangle stands `c` before the element, `b` high from the element's own plane. Source: [form-factors]
 */
function squareFactor(a: number, b: number, c: number): number {
  const root = Math.sqrt(b * b + c * c);
  return (Math.atan(a / c) - (c / root) * Math.atan(a / root)) / (2 * Math.PI);
}

/** The same by a sum over small squares: cos · cos ÷ (π d²). */
function summed(corners: readonly Vec3[], normal: Vec3, face: Vec3, steps = 160): number {
  const [origin, u, , v] = corners;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) {
    for (let j = 0; j < steps; j += 1) {
      const [s, t] = [(i + 0.5) / steps, (j + 0.5) / steps];
      const [x, y, z] = [0, 1, 2].map(
        (axis) => origin[axis] + (u[axis] - origin[axis]) * s + (v[axis] - origin[axis]) * t,
      );
      const at: Vec3 = [x, y, z];
      const square = dot(at, at);
      sum += (Math.max(0, dot(at, normal)) * Math.max(0, -dot(at, face))) / (square * square);
    }
  }
  const area = Math.hypot(...u.map((m, k) => m - origin[k])) * Math.hypot(...v.map((m, k) => m - origin[k]));
  return (sum * area) / (steps * steps * Math.PI);
}

describe('an even diffuse rectangle', () => {
  // Of luminance 1 ÷ π it gives as many lux as the factor says.
  const sizes = [
    [1, 1, 1],
    [2, 0.5, 1.5],
    [0.6, 0.6, 4],
    [3, 4, 0.5],
  ] as const;

  test.each(sizes)('%d by %d m at %d m lights a parallel element as the handbooks say', (a, b, c) => {
    const corners = rectangle(a, b, c);
    const lux = dot(polygonLight(corners, 1 / Math.PI, [0, 0, 0]), [0, 1, 0]);
    expect(lux).toBeCloseTo(parallelFactor(a, b, c), 12);
    expect(lux).toBeCloseTo(summed(corners, [0, 1, 0], [0, -1, 0]), 4);
  });

  test.each(sizes)('%d by %d m at %d m lights an element square to it as the handbooks say', (a, b, c) => {
    // The rectangle stands in the plane y = c; the element's plane holds the side along x, its normal is +z.
    const corners = rectangle(a, b, c);
    const lux = dot(polygonLight(corners, 1 / Math.PI, [0, 0, 0]), [0, 0, 1]);
    expect(lux).toBeCloseTo(squareFactor(a, b, c), 12);
    expect(lux).toBeCloseTo(summed(corners, [0, 0, 1], [0, -1, 0]), 4);
  });

  test('gives the same whichever way round its corners go, and a ninth from three times as far', () => {
    const corners = rectangle(0.1, 0.1, 1);
    const light = polygonLight(corners, 100, [0, 0, 0]);
    expect(polygonLight([...corners].reverse(), 100, [0, 0, 0])[1]).toBeCloseTo(light[1], 12);
    expect(light[1] / polygonLight(rectangle(0.1, 0.1, 3), 100, [0, 0, 0])[1]).toBeCloseTo(9, 0);
    expect(light[1]).toBeCloseTo(100 * 0.01, 1);
  });
});

describe('cloth on the roof', () => {
  const cloth = {
    place: { at: [0, 2, -4] as [number, number, number] },
    headingDegrees: 180,
    tiltDegrees: 0,
  };
  const size: [number, number] = [1.2, 1.2];
  const bounce: Gear = { id: 'cloth', label: 'Bounce', kind: 'bounce', ...cloth, size, reflectance: 0.8 };
  const frame: Gear = { id: 'cloth', label: 'Frame', kind: 'frame', ...cloth, size, transmission: 0.5 };
  const lamp = lampAt('lamp', 'panel', [0, 2, 0], [0, 0, -1]);
  const at = (gear: readonly Gear[], point: Vec3, normal: Vec3) => {
    const { shares } = illuminance(lightScene(darkRoof({ gear: [...gear] }), null, 0), point, normal);
    return {
      lamp: shares.find(({ itemId }) => itemId === 'lamp'),
      cloth: shares.find(({ itemId }) => itemId === 'cloth'),
    };
  };

  test('a bounce gives back ρE ÷ π over its area', () => {
    // 4 m from 10,000 cd: 625 lx in the middle; the face seen from 2 m before it, looking at it.
    const { cloth: share } = at([lamp, bounce], [0, 2, -2], [0, 0, -1]);
    const even = polygonLight(
      [
        [-0.6, 1.4, -4],
        [0.6, 1.4, -4],
        [0.6, 2.6, -4],
        [-0.6, 2.6, -4],
      ],
      (0.8 * 625) / Math.PI,
      [0, 2, -2],
    );
    // The corners get a little less than the middle.
    expect(share?.lux ?? 0).toBeLessThan(Math.abs(even[2]));
    expect((share?.lux ?? 0) / Math.abs(even[2])).toBeGreaterThan(0.94);
    expect(share?.offAxisDegrees).toBeCloseTo(0, 6);
  });

  test('a frame takes the lamp itself away and gives its share on behind it', () => {
    const { lamp: straight, cloth: share } = at([lamp, frame], [0, 2, -6], [0, 0, 1]);
    expect(straight?.visible).toBe(0);
    const bounced = at([lamp, bounce], [0, 2, -2], [0, 0, -1]).cloth?.lux ?? 0;
    expect((share?.lux ?? 0) / bounced).toBeCloseTo(0.5 / 0.8, 6);
  });

  test('a frame of 4 by 4 feet has a softer shadow than the bare head behind it, as much as it is larger', () => {
    // The flag's edge on the axis, 1 m past the frame and 6 m from the lamp; the shadow falls 3 m on.
    const edge = flagAt('flag', [-1.5, 2, -6], [3, 3]);
    const head = lampAt('lamp', 'spot', [0, 2, 0], [0, 0, -1]);
    const wide: Gear = { ...frame, place: { at: [0, 2, -5] }, size: [1.22, 1.22] };
    /** Metres from where a tenth of the open level is left to where nine tenths are. */
    const softness = (gear: readonly Gear[], of: 'lamp' | 'cloth'): number => {
      const reaches = (share: number): number => {
        let [from, to] = [-4, 4];
        for (let step = 0; step < 12; step += 1) {
          const x = (from + to) / 2;
          const levels = [gear, [...gear, edge]].map((each) => at(each, [x, 2, -9], [0, 0, 1])[of]?.lux ?? 0);
          if (levels[1] < share * levels[0]) from = x;
          else to = x;
        }
        return from;
      };
      return reaches(0.9) - reaches(0.1);
    };
    const [bare, framed] = [softness([head], 'lamp'), softness([head, wide], 'cloth')];
    // Face times the way behind over the way before: 0.2 m · 3 ÷ 6 and 1.22 m · 3 ÷ 1.
    expect(bare).toBeLessThan(0.1);
    expect(framed / 3.66).toBeGreaterThan(0.6);
    expect(framed).toBeLessThan(3.66);
  });

  test('nothing comes off the face that no lamp reaches, nor past a flag', () => {
    expect(at([lamp, bounce], [0, 2, -6], [0, 0, 1]).cloth).toBeUndefined();
    expect(at([lamp, frame], [0, 2, -2], [0, 0, -1]).cloth).toBeUndefined();
    const shaded = at([lamp, bounce, flagAt('flag', [0, 2, -3], [3, 3])], [0, 2, -3.5], [0, 0, -1]);
    expect(shaded.cloth).toBeUndefined();
  });
});
