import fc from 'fast-check';
import { expect, test } from 'vitest';
import { moved } from '../../../src/core/form/build/placement';
import { formsAt } from '../../../src/core/form/formsAt';
import type { PlacedPart } from '../../../src/core/form/types';
import { isHoleOf } from '../../../src/core/plan/edits/addHole';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { surfaceUnder } from '../../../src/core/plan/surfaces';
import { EMPTY_PLAN } from '../../../src/desk/emptyPlan';
import { type Draw, drawFrom } from '../../plans/draw';

/** The part of each kind that one stands on. */
const TOPS: Readonly<Record<string, string>> = {
  deck: 'top',
  box: 'box',
  riser: 'boards',
  'stair house': 'roof',
  shed: 'roof',
};
const EDGE_METRES = 0.004;

type Corner = readonly [number, number, number];

/** The highest point of a part's triangles over a place; −∞ where none lies there. */
function highestOf(part: PlacedPart, [x, z]: Spot): number {
  const { positions, indices } = part.shape;
  const cornerOf = (index: number): Corner => {
    const own: Corner = [positions[3 * index], positions[3 * index + 1], positions[3 * index + 2]];
    return part.worldFromPart ? moved(part.worldFromPart, own) : own;
  };
  let highest = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < indices.length; at += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => cornerOf(indices[at + k]));
    const area = (b[0] - a[0]) * (c[2] - a[2]) - (c[0] - a[0]) * (b[2] - a[2]);
    if (Math.abs(area) < 1e-9) continue;
    const second = ((x - a[0]) * (c[2] - a[2]) - (c[0] - a[0]) * (z - a[2])) / area;
    const third = ((b[0] - a[0]) * (z - a[2]) - (x - a[0]) * (b[2] - a[2])) / area;
    if (second < 0 || third < 0 || second + third > 1) continue;
    highest = Math.max(highest, a[1] + second * (b[1] - a[1]) + third * (c[1] - a[1]));
  }
  return highest;
}

/** What the drawn tops say: height and id of the highest, or zero and null. */
function highestUnder(plan: Plan, spot: Spot): { readonly metres: number; readonly id: string | null } {
  let found: { metres: number; id: string | null } = { metres: 0, id: null };
  for (const { id, kind, parts } of formsAt(plan, 0)) {
    for (const part of parts) {
      if (part.name !== TOPS[kind]) continue;
      const metres = highestOf(part, spot);
      if (Number.isFinite(metres) && (found.id === null || metres > found.metres)) found = { metres, id };
    }
  }
  return found;
}

function someLevel(id: string, draw: Draw): Piece {
  const at: [number, number, number] = [draw.between(-7, 7), draw.between(0, 1.5), draw.between(-7, 7)];
  const size: [number, number, number] = [draw.between(0.5, 4), draw.between(0.3, 3), draw.between(0.5, 4)];
  const common = { id, label: id, at, headingDegrees: draw.between(0, 360), size };
  const overhangMetres = draw.between(0, 0.4);
  const door = { widthMetres: 0.8, heightMetres: 1.9, alongMetres: 0 };
  switch (draw.pick(['box', 'riser', 'stair house', 'shed'] as const)) {
    case 'box':
      return { ...common, kind: 'box', material: 'timber' };
    case 'riser':
      return { ...common, kind: 'riser' };
    case 'stair house':
      return { ...common, kind: 'stair house', door, overhangMetres, material: 'brick' };
    case 'shed':
      return {
        ...common,
        kind: 'shed',
        front: 'boards',
        shelves: 0,
        overhangMetres,
        mesh: { cellMetres: 0.05, wireMetres: 0.002 },
      };
  }
}

/** Two decks, the lower one with a bay and a hole, and levels anywhere over them. */
function someRoof(draw: Draw): Plan {
  const lower = {
    id: 'lower',
    label: 'Lower',
    kind: 'deck' as const,
    outline: [
      [-8, -8],
      [8, -8],
      [8, 2],
      [draw.between(0, 6), 2],
      [3, 8],
      [-8, 8],
    ] as Spot[],
    topMetres: 0,
    dropMetres: 9,
  };
  const [x, z] = [draw.between(-7, 0), draw.between(-7, 0)];
  const hole: Spot[] = [
    [x, z],
    [x + 1.5, z],
    [x + 1.2, z + 2],
  ];
  const upper = {
    ...lower,
    id: 'upper',
    outline: [
      [4, -8],
      [8, -8],
      [8, -3],
      [5, -4],
    ] as Spot[],
    topMetres: draw.between(-1, 2),
    dropMetres: 1,
  };
  const levels = Array.from({ length: 7 }, (_, k) => someLevel(`level-${k}`, draw));
  expect(isHoleOf(lower, hole)).toBe(true);
  return {
    ...EMPTY_PLAN,
    pieces: [{ ...lower, holes: [{ id: 'hole', outline: hole }] }, upper, ...levels],
  };
}

test('a surface lies where the highest drawn top lies', () => {
  let asked = 0;
  const found = new Set<string>();
  fc.assert(
    fc.property(fc.noShrink(fc.integer({ min: 0, max: 1e9 })), (seed) => {
      const draw = drawFrom(seed);
      const plan = someRoof(draw);
      for (let k = 0; k < 60; k += 1) {
        const spot: Spot = [draw.between(-9, 9), draw.between(-9, 9)];
        const drawn = highestUnder(plan, spot);
        // Within millimetres of an edge either answer is right.
        const around = [-EDGE_METRES, EDGE_METRES].flatMap((by) => [
          highestUnder(plan, [spot[0] + by, spot[1]]),
          highestUnder(plan, [spot[0], spot[1] + by]),
        ]);
        if (around.some(({ id }) => id !== drawn.id)) continue;
        const surface = surfaceUnder(plan, spot);
        expect(surface.id, `at ${spot.join(', ')}`).toBe(drawn.id);
        expect(surface.metres).toBeCloseTo(drawn.metres, 4);
        asked += 1;
        found.add(plan.pieces.find(({ id }) => id === surface.id)?.kind ?? 'nothing');
      }
    }),
    { numRuns: 25 },
  );
  expect(asked).toBeGreaterThan(1200);
  expect(found).toEqual(new Set([...Object.keys(TOPS), 'nothing']));
});

test('below a height, and without some levels, the next one down is found', () => {
  fc.assert(
    fc.property(fc.noShrink(fc.integer({ min: 0, max: 1e9 })), (seed) => {
      const draw = drawFrom(seed);
      const plan = someRoof(draw);
      const spot: Spot = [draw.between(-8, 8), draw.between(-8, 8)];
      const except = new Set<string>();
      let before = surfaceUnder(plan, spot);
      while (before.id !== null) {
        const below = surfaceUnder(plan, spot, { belowMetres: before.metres - 1e-9 });
        except.add(before.id);
        const next = surfaceUnder(plan, spot, { except });
        expect(next.id === null || next.metres <= before.metres).toBe(true);
        if (next.id !== null && next.metres < before.metres) expect(below).toEqual(next);
        before = next;
      }
    }),
    { numRuns: 200 },
  );
});
