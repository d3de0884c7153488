import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import type { PartShape } from '../../../src/core/form/types';
import { MOST_CORNERS } from '../../../src/core/sight/clip';
import { facesOf } from '../../../src/core/sight/faces';
import { drawFace, drawTriangle, onScreen, type PixelRect, ring, run } from '../../../src/core/sight/filling';
import { SUBPIXELS } from '../../../src/core/sight/grid';
import { randomForms } from './randomForms';

type Corner = readonly [x: number, y: number];

/** Inverse depth over the screen, of one plane. */
const nearnessAt = (x: number, y: number): number => 0.2 + x * 1e-6 - y * 2e-6;

/** What a way of drawing touches: by pixel, how often, and the depth there. */
function touched(draw: (sink: { span(column: number, y0: number, y1: number): void }) => void) {
  const pixels = new Map<string, { times: number; nearness: number }>();
  draw({
    span(column, y0, y1) {
      for (let y = y0; y <= y1; y += 1) {
        const key = `${column} ${y}`;
        const times = (pixels.get(key)?.times ?? 0) + 1;
        pixels.set(key, { times, nearness: run[0] + (y - y0) * run[1] });
      }
    },
  });
  return pixels;
}

// Others of this worker draw shapes into the arrays that are here now.
const { x, y, nearness } = onScreen;
afterAll(() => {
  Object.assign(onScreen, { x, y, nearness });
});

function putOnScreen(corners: readonly Corner[]): void {
  onScreen.x = Float64Array.from(corners, ([x]) => x);
  onScreen.y = Float64Array.from(corners, ([, y]) => y);
  onScreen.nearness = Float64Array.from(corners, ([x, y]) => nearnessAt(x, y));
  onScreen.recede = 0;
  for (let k = 0; k < corners.length; k += 1) ring[k] = k;
}

/** Corners in order around a middle: round as a rule, and never more than a face may have. */
const around = fc
  .record({
    middle: fc.tuple(fc.integer({ min: -2000, max: 9000 }), fc.integer({ min: -2000, max: 9000 })),
    across: fc.integer({ min: 1, max: 6000 }),
    down: fc.integer({ min: 1, max: 6000 }),
    turns: fc.array(fc.integer({ min: 0, max: 359 }), { minLength: 3, maxLength: MOST_CORNERS }),
    isReversed: fc.boolean(),
    isOnCentres: fc.boolean(),
  })
  .map(({ middle: [x, y], across, down, turns, isReversed, isOnCentres }): Corner[] => {
    const corners = [...new Set(turns)]
      .sort((a, b) => a - b)
      .map((degrees): Corner => {
        const turn = (degrees * Math.PI) / 180;
        const place: Corner = [
          Math.round(x + across * Math.cos(turn)),
          Math.round(y + down * Math.sin(turn)),
        ];
        // On the middles of columns, where one edge gives way to the next.
        return isOnCentres ? [Math.round(place[0] / SUBPIXELS) * SUBPIXELS + SUBPIXELS / 2, place[1]] : place;
      });
    return isReversed ? corners.reverse() : corners;
  })
  .filter((corners) => corners.length >= 3);

/** Corners anywhere: faces that cross themselves, that are dented, or that are no face at all. */
const anywhere = fc.array(
  fc.tuple(fc.integer({ min: -500, max: 4000 }), fc.integer({ min: -500, max: 4000 })),
  { minLength: 3, maxLength: MOST_CORNERS },
);

const rects = fc.constantFrom<PixelRect>(
  { left: 0, top: 0, right: 40, bottom: 30 },
  { left: 5, top: 3, right: 17, bottom: 9 },
);

test('a face has the pixels of its triangles, each once, and their depths', () => {
  fc.assert(
    fc.property(
      fc.oneof({ weight: 3, arbitrary: around }, { weight: 1, arbitrary: anywhere }),
      fc.constantFrom(-1, 0, 1),
      rects,
      (corners, wanted, rect) => {
        putOnScreen(corners);
        const apart = touched((sink) => {
          for (let k = 1; k + 1 < corners.length; k += 1) drawTriangle(0, k, k + 1, wanted, rect, sink);
        });
        const whole = touched((sink) => drawFace(corners.length, wanted, rect, sink));
        expect([...whole.keys()].sort()).toEqual([...apart.keys()].sort());
        for (const [key, { times, nearness }] of whole) {
          const own = apart.get(key);
          expect(times).toBe(own?.times);
          expect(Math.abs(nearness - (own?.nearness ?? Number.NaN))).toBeLessThan(1e-9);
        }
      },
    ),
    { numRuns: 3000 },
  );
});

/** A triangle by its places, begun at the lowest, so that two that are the same read the same. */
function named({ positions }: PartShape, corners: readonly number[]): string {
  const places = corners.map((corner) => positions.subarray(3 * corner, 3 * corner + 3).join(' '));
  const first = places.indexOf([...places].sort()[0]);
  return [0, 1, 2].map((k) => places[(first + k) % 3]).join(', ');
}

/** How far a corner is from the plane of three others, metres. */
function heightOver({ positions }: PartShape, [a, b, c, d]: readonly number[]): number {
  const way = (to: number) => [0, 1, 2].map((axis) => positions[3 * to + axis] - positions[3 * a + axis]);
  const [u, v, w] = [way(b), way(c), way(d)];
  const normal = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  return Math.abs(normal[0] * w[0] + normal[1] * w[1] + normal[2] * w[2]) / Math.hypot(...normal);
}

test('the faces of what stands on roofs are its triangles, two and two where they lie in a plane', () => {
  let [paired, alone] = [0, 0];
  for (let seed = 1; seed <= 8; seed += 1) {
    for (const { shape } of randomForms(seed).flatMap(({ parts }) => parts)) {
      const { quadrangles, triangles } = facesOf(shape);
      const drawn: string[] = [];
      for (let k = 0; k < quadrangles.length; k += 4) {
        const corners = [...quadrangles.subarray(k, k + 4)];
        const [a, b, c, d] = corners;
        drawn.push(named(shape, [a, b, c]), named(shape, [a, c, d]));
        expect(heightOver(shape, corners)).toBeLessThan(2.1e-5);
      }
      for (let k = 0; k < triangles.length; k += 3)
        drawn.push(named(shape, [...triangles.subarray(k, k + 3)]));
      const own: string[] = [];
      for (let k = 0; k < shape.indices.length; k += 3)
        own.push(named(shape, [...shape.indices.subarray(k, k + 3)]));
      expect(drawn.sort()).toEqual(own.sort());
      paired += quadrangles.length / 4;
      alone += triangles.length / 3;
    }
  }
  expect(paired).toBeGreaterThan(alone);
});
