import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { hullOf } from '../../../../src/core/form/fromAbove/hull';
import {
  lengthWithin,
  polygonWithin,
  segmentWithin,
} from '../../../../src/screens/overhead/geometry/clipping';
import { metreTicks } from '../../../../src/screens/overhead/geometry/dimensions';
import { fanPath, spreadOf } from '../../../../src/screens/overhead/geometry/fans';
import { placeNotes } from '../../../../src/screens/overhead/geometry/notes';
import { meshAlong } from '../../../../src/screens/overhead/geometry/paths';
import { bandOf } from '../../../../src/screens/overhead/geometry/runs';
import {
  type Bounds,
  boundsOf,
  headingOf,
  isInside,
  type Spot,
  standing,
  towards,
} from '../../../../src/screens/overhead/geometry/spots';

const coordinate = fc
  .double({ min: -50, max: 50, noNaN: true })
  .map((value) => Math.round(value * 1000) / 1000 + 0);
const spot = fc.tuple(coordinate, coordinate);
const SQUARE: Spot[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];

describe('headings', () => {
  test('run clockwise from up the sheet', () => {
    expect(towards(0)[1]).toBeCloseTo(-1);
    expect(towards(90)[0]).toBeCloseTo(1);
    expect(headingOf([0, 1])).toBeCloseTo(180);
  });

  test('a thing at heading 90 has its front to the right and its right side below', () => {
    const front = standing([1, 2], 90, [0, -1]);
    expect(front[0]).toBeCloseTo(2);
    expect(front[1]).toBeCloseTo(2);
    const right = standing([1, 2], 90, [1, 0]);
    expect(right[0]).toBeCloseTo(1);
    expect(right[1]).toBeCloseTo(3);
  });
});

describe('outlines', () => {
  test.prop([fc.array(spot, { minLength: 3, maxLength: 40 })])('the hull holds every point', (points) => {
    const hull = hullOf(points);
    const [left, top, right, bottom] = boundsOf(points) ?? [0, 0, 0, 0];
    const around = boundsOf(hull);
    expect(around).toEqual([left, top, right, bottom]);
  });

  test('a closed run of 0.3 m lies half to each side of its middle line', () => {
    const band = bandOf(SQUARE, true, 0.3);
    const rounded = [band.left, band.right].map((side) =>
      (boundsOf(side) ?? []).map((value) => Number(value.toFixed(9))),
    );
    expect(rounded).toContainEqual([-0.15, -0.15, 10.15, 10.15]);
    expect(rounded).toContainEqual([0.15, 0.15, 9.85, 9.85]);
  });

  test('mesh 0.2 m wide makes a cross every 0.2 m', () => {
    expect(meshAlong([0, 0], [1, 0], 0.2).match(/M/g)).toHaveLength(10);
  });

  test('inside is inside', () => {
    expect(isInside([5, 5], SQUARE)).toBe(true);
    expect(isInside([11, 5], SQUARE)).toBe(false);
  });
});

describe('clipping', () => {
  const bounds: Bounds = [0, 0, 10, 10];

  test('a triangle across the edge is cut at the edge', () => {
    const cut = polygonWithin(
      [
        [5, 5],
        [25, 5],
        [5, 25],
      ],
      bounds,
    );
    expect(boundsOf(cut)).toEqual([5, 5, 10, 10]);
  });

  test.prop([fc.array(spot, { minLength: 3, maxLength: 8 })])(
    'nothing that is cut lies outside',
    (polygon) => {
      for (const [x, z] of polygonWithin(polygon, bounds)) {
        expect(x).toBeGreaterThanOrEqual(-1e-9);
        expect(x).toBeLessThanOrEqual(10 + 1e-9);
        expect(z).toBeGreaterThanOrEqual(-1e-9);
        expect(z).toBeLessThanOrEqual(10 + 1e-9);
      }
    },
  );

  test('segments', () => {
    expect(segmentWithin([-5, 5], [15, 5], bounds)).toEqual([
      [0, 5],
      [10, 5],
    ]);
    expect(segmentWithin([-5, -5], [15, -1], bounds)).toBeNull();
    expect(lengthWithin([5, -5], [5, 3], bounds)).toBeCloseTo(3);
  });
});

describe('throws', () => {
  test('a level lamp spreads by its own angle', () => {
    const spread = spreadOf(40, 0);
    expect(spread.round ? 0 : spread.halfDegrees).toBeCloseTo(20);
  });

  test('tilted down, the same cone takes in more of the compass, and all of it once it holds the plumb line', () => {
    const spread = spreadOf(40, -45);
    expect(spread.round ? 0 : spread.halfDegrees).toBeCloseTo(
      (Math.asin(Math.sin(Math.PI / 9) / Math.SQRT1_2) * 180) / Math.PI,
    );
    expect(spreadOf(40, -75).round).toBe(true);
    expect(spreadOf(180, 0).round).toBe(true);
  });

  test('a fan starts at its apex', () => {
    expect(fanPath([1, 2], 0, 10, 5).startsWith('M1 2L')).toBe(true);
  });
});

describe('furniture', () => {
  test('ticks stand at whole metres from the origin, every fifth longer', () => {
    const ticks = metreTicks(24, 27, 100);
    expect(ticks.map(({ at }) => at)).toEqual([24, 51, 78]);
    expect(ticks.map(({ long }) => long)).toEqual([true, false, false]);
  });

  test('notes stand outside the drawing and off each other, with leaders that end on the ring', () => {
    const ring = (x: number, y: number) => ({ middle: [x, y] as Spot, radius: 20 });
    const wishes = [
      { id: 'a', ring: ring(500, 200), width: 110, height: 30 },
      { id: 'b', ring: ring(520, 220), width: 110, height: 30 },
    ];
    const drawing: Bounds = [20, 120, 690, 590];
    const placed = placeNotes(
      wishes,
      drawing,
      { blocked: [[0, 620, 712, 696]], crossed: [] },
      [0, 0, 712, 696],
    );
    expect(placed).toHaveLength(2);
    for (const { bounds } of placed) expect(bounds[3]).toBeLessThanOrEqual(120);
    const [from] = placed[0].leader;
    expect(Math.hypot(from[0] - 500, from[1] - 200)).toBeCloseTo(20);
  });
});
