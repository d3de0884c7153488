import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pieceParts } from '../../../../src/core/form/pieces';
import { placedOpenings, uncut } from '../../../../src/core/form/pieces/making/openings';
import type { Opening, Piece } from '../../../../src/core/plan/schema/pieces';
import { coplanarPairs } from '../coplanar';
import { pieceVolumes } from '../gear/solids';
import { boundsOf, isSound, openEdges, partNamed, signedVolume } from '../solids';

const GROUND = { surface: 'concrete', wetness: 'dry' } as const;
type Path = [number, number][];
type Numbers = readonly [along: number, width: number, sill: number, height: number];
const opening = ([alongMetres, widthMetres, sillMetres, heightMetres]: Numbers, k = 0): Opening => ({
  id: `o${k}`,
  alongMetres,
  widthMetres,
  sillMetres,
  heightMetres,
});
const openings = (...all: Numbers[]): Opening[] => all.map(opening);

const run = { id: 'r', label: 'Run', closed: false, baseMetres: 1, heightMetres: 2.5, thicknessMetres: 0.2 };
const wall = (path: Path, cut: Opening[], closed = false): Piece => ({
  ...run,
  kind: 'wall',
  path,
  closed,
  openings: cut,
  material: 'brick',
});
const parapet = (path: Path, cut: Opening[], closed = false): Piece => ({
  ...run,
  kind: 'parapet',
  path,
  closed,
  openings: cut,
  heightMetres: 1,
  copingMetres: 0.1,
  material: 'brick',
});
const fence = (path: Path, cut: Opening[], closed = false): Extract<Piece, { kind: 'fence' }> => ({
  id: 'f',
  label: 'Fence',
  kind: 'fence',
  path,
  closed,
  baseMetres: 1,
  heightMetres: 2,
  postEveryMetres: 2.5,
  postMetres: 0.06,
  rails: 2,
  mesh: { cellMetres: 0.05, wireMetres: 0.003 },
  openings: cut,
});
const STRAIGHT: Path = [
  [0, 0],
  [6, 0],
];
const CORNER: Path = [
  [0, 0],
  [4, 0],
  [4, 4],
];
const SQUARE: Path = [
  [0, 0],
  [4, 0],
  [4, 4],
  [0, 4],
];

describe('an opening in a wall', () => {
  test('takes its width, height and the thickness out of the wall', () => {
    const body = partNamed(
      pieceParts(wall(STRAIGHT, openings([2, 0.9, 0, 2.05], [4.5, 1, 1, 0.8])), GROUND),
      'wall',
    );
    expect(openEdges(body)).toEqual([]);
    expect(signedVolume(body)).toBeCloseTo((6 * 2.5 - 0.9 * 2.05 - 1 * 0.8) * 0.2, 5);
    expect(boundsOf([{ name: 'wall', shape: body, worldFromPart: null }]).high[1]).toBe(3.5);
  });

  test('counts once where it lies over another', () => {
    // 2 × 1 m and 2 × 1 m that share 1 × 0.5 m.
    const cut = openings([2, 2, 0.5, 1], [3, 2, 1, 1]);
    const body = partNamed(pieceParts(wall(STRAIGHT, cut), GROUND), 'wall');
    expect(openEdges(body)).toEqual([]);
    expect(signedVolume(body)).toBeCloseTo((15 - 2 - 2 + 0.5) * 0.2, 5);
  });

  test('of its full height parts it, and of all of it leaves nothing', () => {
    const body = partNamed(pieceParts(wall(STRAIGHT, openings([3, 1, 0, 9])), GROUND), 'wall');
    expect(pieceVolumes(body).map((volume) => Number(volume.toFixed(5)))).toEqual([1.25, 1.25]);
    expect(pieceParts(wall(STRAIGHT, openings([3, 6, 0, 9])), GROUND)).toEqual([]);
  });

  test('slides off a corner along the leg that its middle lies on', () => {
    for (const [along, near] of [
      [3.9, 4 - 0.1 - 0.01 - 1],
      [4.2, 0.1 + 0.01],
    ] as const) {
      const [placed] = placedOpenings({ ...run, path: CORNER, openings: openings([along, 1, 0, 2]) }, 0.2);
      expect(placed.leg).toBe(along < 4 ? 0 : 1);
      expect(placed.near).toBeCloseTo(near, 9);
      expect(placed.far - placed.near).toBeCloseTo(1, 9);
    }
    const body = partNamed(pieceParts(wall(CORNER, openings([3.9, 1, 0, 2])), GROUND), 'wall');
    expect(openEdges(body)).toEqual([]);
    expect(signedVolume(body)).toBeCloseTo((8 * 2.5 - 2) * 0.2, 5);
  });

  test('is cut down where its leg is shorter, and lies at the end where it lies beyond it', () => {
    const [wide, beyond] = placedOpenings(
      { ...run, path: STRAIGHT, openings: openings([3, 20, 0, 2], [40, 1, 0, 2]) },
      0.2,
    );
    expect([wide.near, wide.far]).toEqual([0, 6]);
    expect([beyond.near, beyond.far]).toEqual([5, 6]);
    expect(beyond.from).toEqual([5, 0]);
  });

  test('above the wall, or without room beside the corners, is left out', () => {
    expect(placedOpenings({ ...run, path: STRAIGHT, openings: openings([3, 1, 2.5, 1]) }, 0.2)).toEqual([]);
    const short: Path = [
      [0, 0],
      [3, 0],
      [3, 0.15],
      [6, 0.15],
    ];
    expect(placedOpenings({ ...run, path: short, openings: openings([3.05, 0.1, 0, 1]) }, 0.2)).toEqual([]);
  });
});

describe('an opening in a parapet', () => {
  test('that reaches the top goes through the coping, one below it does not', () => {
    const through = pieceParts(parapet(STRAIGHT, openings([3, 1, 0, 1])), GROUND);
    expect(pieceVolumes(partNamed(through, 'coping'))).toHaveLength(2);
    expect(pieceVolumes(partNamed(through, 'wall'))).toHaveLength(2);
    const below = pieceParts(parapet(STRAIGHT, openings([3, 1, 0, 0.9])), GROUND);
    expect(pieceVolumes(partNamed(below, 'coping'))).toHaveLength(1);
    expect(pieceVolumes(partNamed(below, 'wall'))).toHaveLength(2);
    expect(coplanarPairs(through)).toEqual([]);
  });

  test('of a closed run leaves one coping from side to side round the first corner', () => {
    const parts = pieceParts(parapet(SQUARE, openings([2, 1, 0, 1]), true), GROUND);
    const coping = partNamed(parts, 'coping');
    expect(openEdges(coping)).toEqual([]);
    expect(pieceVolumes(coping)).toHaveLength(1);
    const [{ path, closed }] = uncut(
      { path: SQUARE, closed: true },
      placedOpenings({ ...run, path: SQUARE, closed: true, openings: openings([2, 1, 0, 1]) }, 0.2),
    );
    expect(closed).toBe(false);
    expect(path).toEqual([
      [2.5, 0],
      [4, 0],
      [4, 4],
      [0, 4],
      [0, 0],
      [1.5, 0],
    ]);
  });
});

describe('a gate in a fence', () => {
  const parts = pieceParts(fence(STRAIGHT, openings([3, 1.2, 0, 2])), GROUND);

  test('stands between two posts of its own, with none in it', () => {
    const feet = partNamed(parts, 'posts').tubes.map(({ from }) => from[0]);
    expect(feet.toSorted((a, b) => a - b)).toEqual([0, 2, 2.4, 3.6, 4, 6].map((x) => expect.closeTo(x, 6)));
  });

  test('leaves out rails and mesh', () => {
    const rails = partNamed(parts, 'rails').tubes;
    expect(rails).toHaveLength(4);
    for (const { from, to } of rails) expect(to[0] < 2.4 || from[0] > 3.6).toBe(true);
    const mesh = partNamed(parts, 'mesh');
    expect(mesh.indices.length / 3).toBe(4);
    expect(mesh.positions.every((x, k) => k % 3 !== 0 || x <= 2.4 + 1e-6 || x >= 3.6 - 1e-6)).toBe(true);
  });

  test('lower than the fence keeps the mesh and the rail above it', () => {
    const low = pieceParts(fence(STRAIGHT, openings([3, 1.2, 0, 1.5])), GROUND);
    expect(partNamed(low, 'rails').tubes).toHaveLength(3);
    expect(partNamed(low, 'mesh').indices.length / 3).toBe(6);
  });

  test('beside a corner shares its post', () => {
    const feet = partNamed(pieceParts(fence(CORNER, openings([3.4, 1.2, 0, 2])), GROUND), 'posts').tubes.map(
      ({ from }) => [from[0], from[2]],
    );
    expect(feet).toContainEqual([4, 0]);
    expect(new Set(feet.map((foot) => foot.map((each) => each.toFixed(2)).join())).size).toBe(feet.length);
    expect(feet.some(([x, z]) => z === 0 && x > 2.81 && x < 3.99)).toBe(false);
  });

  test('over another makes one wide gate', () => {
    const wide = pieceParts(fence(STRAIGHT, openings([2.5, 1, 0, 2], [3.2, 1, 0, 2])), GROUND);
    const feet = partNamed(wide, 'posts').tubes.map(({ from }) => from[0]);
    expect(feet.filter((x) => x > 2.01 && x < 3.69)).toEqual([]);
  });
});

test('runs with any openings are closed, face outwards, and lose what the openings take', () => {
  const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const turns = fc.array(fc.tuple(metres(2, 7), metres(-110, 110)), { minLength: 1, maxLength: 4 });
  const cuts = fc.array(fc.tuple(metres(0, 30), metres(0.05, 4), metres(0, 3), metres(0.05, 3)), {
    minLength: 1,
    maxLength: 7,
  });
  fc.assert(
    fc.property(turns, cuts, metres(0.05, 0.4), fc.boolean(), (legs, numbers, thicknessMetres, isParapet) => {
      const path: Path = [[0, 0]];
      let heading = 0;
      for (const [length, turn] of legs) {
        const [x, z] = path[path.length - 1];
        heading += (turn * Math.PI) / 180;
        path.push([x + length * Math.cos(heading), z + length * Math.sin(heading)]);
      }
      const cut = numbers.map(opening);
      const piece = { ...(isParapet ? parapet(path, cut) : wall(path, cut)), thicknessMetres } as Piece;
      const whole = { ...piece, openings: [] } as Piece;
      const parts = pieceParts(piece, GROUND);
      for (const { shape } of parts) {
        expect(isSound(shape)).toBe(true);
        expect(openEdges(shape)).toEqual([]);
        for (const volume of pieceVolumes(shape)) expect(volume).toBeGreaterThan(0);
      }
      for (const { shape } of pieceParts(fence(path, cut), GROUND)) expect(isSound(shape)).toBe(true);
      const body = parts.find(({ name }) => name === 'wall')?.shape;
      const left = body ? signedVolume(body) : 0;
      const all = signedVolume(partNamed(pieceParts(whole, GROUND), 'wall'));
      const high = isParapet ? 0.9 : 2.5;
      const thickest = thicknessMetres + (isParapet ? 0.08 : 0);
      const placed = placedOpenings(
        { ...run, heightMetres: isParapet ? 1 : 2.5, path, openings: cut },
        thickest,
      );
      const taken = placed.map((each) => {
        const tall = Math.max(0, Math.min(each.high, high) - Math.min(each.low, high));
        return (each.far - each.near) * tall * thicknessMetres;
      });
      const sum = taken.reduce((total, each) => total + each, 0);
      expect(left).toBeLessThanOrEqual(all - Math.max(0, ...taken) + 1e-4);
      expect(left).toBeGreaterThanOrEqual(all - sum - 1e-3);
    }),
    { numRuns: 150 },
  );
});
