import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pieceParts } from '../../../../src/core/form/pieces';
import { opennessOf } from '../../../../src/core/form/pieces/making/mesh';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import { isSound, openEdges, partNamed, signedVolume } from '../solids';

const GROUND = { surface: 'concrete', wetness: 'dry' } as const;
type Path = [number, number][];
const WALL = {
  id: 'w',
  label: 'Wall',
  kind: 'wall',
  baseMetres: 0.5,
  heightMetres: 2,
  thicknessMetres: 0.2,
  material: 'brick',
} as const;
const wallShape = (path: Path, closed: boolean) =>
  partNamed(pieceParts({ ...WALL, path, closed }, GROUND), 'wall');
const FENCE: Extract<Piece, { kind: 'fence' }> = {
  id: 'f',
  label: 'Fence',
  kind: 'fence',
  path: [
    [0, 0],
    [10, 0],
    [10, 5],
  ],
  closed: false,
  baseMetres: 1,
  heightMetres: 2,
  postEveryMetres: 2.4,
  postMetres: 0.06,
  rails: 3,
  mesh: { cellMetres: 0.05, wireMetres: 0.005 },
};

describe('a mitred run', () => {
  const square: Path = [
    [0, 0],
    [4, 0],
    [4, 4],
    [0, 4],
  ];

  test.each([
    ['one way round', square],
    ['the other way round', square.toReversed()],
    ['with its first corner repeated at the end', [...square, square[0]]],
  ])('closes a square exactly, %s', (_, path) => {
    const shape = wallShape(path, true);
    expect(openEdges(shape)).toEqual([]);
    // A ring of 4.2 m outside and 3.8 m inside, 2 m high: neither gap nor overlap.
    expect(signedVolume(shape)).toBeCloseTo((4.2 ** 2 - 3.8 ** 2) * 2, 4);
    expect(shape.indices.length / 3).toBe(4 * 4 * 2);
  });

  test('left open, it ends square at both ends', () => {
    const shape = wallShape([square[0], square[1], square[2]], false);
    expect(openEdges(shape)).toEqual([]);
    // The mitred corner takes as much outside as it gives inside.
    expect(signedVolume(shape)).toBeCloseTo(8 * 0.2 * 2, 5);
  });

  test('a corner in a straight line changes nothing of its body', () => {
    const straight = wallShape(
      [
        [0, 0],
        [1, 0],
        [4, 0],
      ],
      false,
    );
    expect(signedVolume(straight)).toBeCloseTo(4 * 0.2 * 2, 5);
  });

  test('a path without length has no parts', () => {
    const path: Path = [
      [1, 1],
      [1, 1],
    ];
    expect(pieceParts({ ...WALL, path, closed: true }, GROUND)).toEqual([]);
    expect(pieceParts({ ...FENCE, path }, GROUND)).toEqual([]);
  });

  test('turned back on itself, it stays finite and within a few thicknesses of its path', () => {
    const shape = wallShape(
      [
        [0, 0],
        [4, 0],
        [0, 0.001],
      ],
      false,
    );
    expect(isSound(shape)).toBe(true);
    expect(Math.max(...shape.positions)).toBeLessThan(4 + 0.1 * 4 + 1e-6);
  });
});

test('a coping of nothing is left out', () => {
  const path: Path = [
    [0, 0],
    [4, 0],
  ];
  const parapet = { ...WALL, kind: 'parapet', path, closed: false, copingMetres: 0 } as const;
  expect(pieceParts(parapet, GROUND).map((part) => part.name)).toEqual(['wall']);
});

describe('a fence', () => {
  test('has posts at ends and corners, and evenly between, at most so far apart', () => {
    const { tubes } = partNamed(pieceParts(FENCE, GROUND), 'posts');
    // 10 m in five bays of 2 m, 5 m in three bays of 1.67 m.
    expect(tubes).toHaveLength(5 + 3 + 1);
    const feet = tubes.map((tube) => [tube.from[0], tube.from[2]]);
    for (const corner of FENCE.path) expect(feet).toContainEqual(corner);
    const gaps = feet.slice(1).map((foot, k) => Math.hypot(foot[0] - feet[k][0], foot[1] - feet[k][1]));
    expect(Math.max(...gaps)).toBeLessThanOrEqual(FENCE.postEveryMetres);
    for (const gap of gaps.slice(0, 5)) expect(gap).toBeCloseTo(2, 9);
    for (const tube of tubes) expect([tube.from[1], tube.to[1]]).toEqual([1, 3]);
  });

  test('closed, has no post twice', () => {
    const { tubes } = partNamed(pieceParts({ ...FENCE, closed: true }, GROUND), 'posts');
    expect(tubes).toHaveLength(5 + 3 + Math.ceil(Math.hypot(10, 5) / 2.4));
    expect(new Set(tubes.map((tube) => tube.from.map((value) => value.toFixed(3)).join())).size).toBe(
      tubes.length,
    );
  });

  test('has its rails evenly from near the foot to the top, on every leg', () => {
    const { tubes } = partNamed(pieceParts(FENCE, GROUND), 'rails');
    expect(tubes).toHaveLength(3 * 2);
    const [low, middle, high] = tubes.slice(0, 3).map((tube) => tube.from[1]);
    expect(low).toBeGreaterThan(1.05);
    expect(middle).toBeCloseTo((low + high) / 2, 9);
    expect(high + tubes[0].radius).toBeCloseTo(3, 9);
    expect(pieceParts({ ...FENCE, rails: 0, mesh: null }, GROUND).map((part) => part.name)).toEqual([
      'posts',
    ]);
  });

  test('lets through (1 − wire ÷ cell)² of the light', () => {
    expect(opennessOf({ cellMetres: 0.05, wireMetres: 0.005 })).toBeCloseTo(0.81, 12);
    expect(opennessOf({ cellMetres: 0.025, wireMetres: 0.0125 })).toBeCloseTo(0.25, 12);
    expect(opennessOf({ cellMetres: 0.01, wireMetres: 0.02 })).toBe(0);
    const mesh = partNamed(pieceParts(FENCE, GROUND), 'mesh');
    expect(mesh.openness).toBeCloseTo(0.81, 12);
    expect(mesh.indices.length / 3).toBe(2 * 2);
    expect(mesh.substance).toBe('wire mesh');
  });

  test('of 5 km with a post every 0.2 m still has a sane number of posts', () => {
    const path: Path = [
      [-2500, 0],
      [2500, 0],
    ];
    const { tubes } = partNamed(pieceParts({ ...FENCE, path, postEveryMetres: 0.2 }, GROUND), 'posts');
    expect(tubes.length).toBeLessThanOrEqual(601);
  });
});

test('no path gives a corner that is no number', () => {
  const metres = fc.oneof(
    fc.double({ min: -5000, max: 5000, noNaN: true }),
    fc.integer({ min: -3, max: 3 }),
    fc.constantFrom(0, 1e-5, 1e-9),
  );
  const paths = fc.array(fc.tuple(metres, metres), { minLength: 2, maxLength: 14 });
  const kinds = fc.constantFrom<'wall' | 'parapet' | 'fence' | 'deck'>('wall', 'parapet', 'fence', 'deck');
  fc.assert(
    fc.property(paths, fc.boolean(), kinds, (path, closed, kind) => {
      const piece: Piece =
        kind === 'deck'
          ? { id: 'd', label: 'd', kind, outline: path, topMetres: 0, dropMetres: 3 }
          : kind === 'fence'
            ? { ...FENCE, path, closed, postEveryMetres: 20 }
            : kind === 'wall'
              ? { ...WALL, path, closed }
              : { ...WALL, kind, path, closed, copingMetres: 0.1 };
      for (const { shape } of pieceParts(piece, GROUND)) expect(isSound(shape)).toBe(true);
    }),
    { numRuns: 400 },
  );
});
