import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Mark } from '../../../src/core/plan/schema/cast';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { clearWay, wayMetres } from '../../../src/core/plan/walkWays/clearWay';
import { walkHits } from '../../../src/core/plan/walkWays/hits';
import { type Draw, drawFrom } from '../../plans/draw';
import { rooftop } from '../../unit/core/plan/edits/rooftop';

/** A small roof, 6 m by 5 m, with things on it, and how near one may walk to each, worked out in another way. */
interface Roof {
  readonly plan: Plan;
  /** How far a place is from each thing; 0 within it. */
  readonly away: readonly ((x: number, z: number) => number)[];
}

const [WIDE, DEEP] = [3, 2.5];
const SHOULDER = 0.25;
const STEP = 0.1;

function someRoof(draw: Draw): Roof {
  const away: ((x: number, z: number) => number)[] = [];
  const pieces: Piece[] = [];
  const deck: Piece = {
    id: 'deck',
    label: 'Deck',
    kind: 'deck',
    outline: [
      [-WIDE, -DEEP],
      [WIDE, -DEEP],
      [WIDE, DEEP],
      [-WIDE, DEEP],
    ],
    topMetres: 0,
    dropMetres: 9,
  };
  // Each edge by itself: who stands near one may walk along that one.
  away.push(
    (x) => Math.max(0, WIDE - x),
    (x) => Math.max(0, WIDE + x),
    (_, z) => Math.max(0, DEEP - z),
    (_, z) => Math.max(0, DEEP + z),
  );
  if (draw.chance(0.4)) {
    const [x, z] = [draw.between(-1.5, 1), draw.between(-1.5, 1)];
    const [w, d] = [draw.between(0.4, 1), draw.between(0.4, 1)];
    const outline: Spot[] = [
      [x, z],
      [x + w, z],
      [x + w, z + d],
      [x, z + d],
    ];
    pieces.push({ ...deck, holes: [{ id: 'h', outline }] });
    // Its edges one by one, like the deck's, and nobody in it.
    const from = (px: number, pz: number, [ax, az]: Spot, [bx, bz]: Spot): number =>
      Math.hypot(Math.max(ax - px, 0, px - bx), Math.max(az - pz, 0, pz - bz));
    away.push(
      (px, pz) => from(px, pz, [x, z], [x + w, z]),
      (px, pz) => from(px, pz, [x + w, z], [x + w, z + d]),
      (px, pz) => from(px, pz, [x, z + d], [x + w, z + d]),
      (px, pz) => from(px, pz, [x, z], [x, z + d]),
      (px, pz) => (px > x && px < x + w && pz > z && pz < z + d ? 0 : Number.POSITIVE_INFINITY),
    );
  } else pieces.push(deck);
  for (let k = draw.whole(1, 3); k > 0; k -= 1) {
    const [x, z, degrees] = [draw.between(-2, 2), draw.between(-1.5, 1.5), draw.between(0, 360)];
    const size: [number, number, number] = [draw.between(0.2, 1.6), 1, draw.between(0.2, 1)];
    pieces.push({
      id: `box-${k}`,
      label: 'Box',
      kind: 'box',
      at: [x, 0, z],
      headingDegrees: degrees,
      size,
      material: 'timber',
    });
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    away.push((px, pz) => {
      const [dx, dz] = [px - x, pz - z];
      const [right, back] = [dx * cos + dz * sin, -dx * sin + dz * cos];
      return Math.hypot(
        Math.max(Math.abs(right) - size[0] / 2, 0),
        Math.max(Math.abs(back) - size[2] / 2, 0),
      );
    });
  }
  if (draw.chance(0.6)) {
    const [x, end] = [draw.between(-1, 1), draw.between(-1, 2.4)];
    pieces.push({
      id: 'wall',
      label: 'Wall',
      kind: 'wall',
      path: [
        [x, -DEEP],
        [x, end],
      ],
      closed: false,
      baseMetres: 0,
      heightMetres: 2,
      thicknessMetres: 0.2,
      material: 'brick',
    });
    away.push((px, pz) => Math.hypot(Math.max(Math.abs(px - x) - 0.1, 0), Math.max(pz - end, -DEEP - pz, 0)));
  }
  return { plan: { ...rooftop(), pieces }, away };
}

/** Moves on the grid: to all places that are up to three steps off and on no shorter move's line. */
const MOVES = [-3, -2, -1, 0, 1, 2, 3].flatMap((dx) =>
  [-3, -2, -1, 0, 1, 2, 3].flatMap((dz): [number, number][] => {
    const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
    return divisor(Math.abs(dx), Math.abs(dz)) === 1 ? [[dx, dz]] : [];
  }),
);

/** The shortest way over a grid of places a tenth of a metre apart, metres; null for none. */
function gridMetres(isFree: (x: number, z: number) => boolean, from: Spot, to: Spot): number | null {
  const [columns, rows] = [Math.round((2 * WIDE) / STEP) + 1, Math.round((2 * DEEP) / STEP) + 1];
  const cell = ([x, z]: Spot): number => Math.round((x + WIDE) / STEP) * rows + Math.round((z + DEEP) / STEP);
  const place = (k: number): Spot => [-WIDE + Math.floor(k / rows) * STEP, -DEEP + (k % rows) * STEP];
  const free = Array.from({ length: columns * rows }, (_, k) => isFree(...place(k)));
  const metres = new Float64Array(columns * rows).fill(Number.POSITIVE_INFINITY);
  const waiting: number[][] = [[cell(from)]];
  metres[cell(from)] = 0;
  // A list for each centimetre gone: within one the order does not matter more than that.
  for (let bucket = 0; bucket < waiting.length && bucket <= metres[cell(to)] * 100; bucket += 1)
    for (const k of waiting[bucket] ?? []) {
      if (Math.floor(metres[k] * 100) !== bucket) continue;
      const [column, row] = [Math.floor(k / rows), k % rows];
      for (const [dx, dz] of MOVES) {
        const [c, r] = [column + dx, row + dz];
        if (c < 0 || r < 0 || c >= columns || r >= rows) continue;
        const next = c * rows + r;
        const gone = metres[k] + Math.hypot(dx, dz) * STEP;
        if (!free[next] || gone >= metres[next]) continue;
        const [x, z] = place(k);
        const parts = Math.ceil(Math.hypot(dx, dz) * 4);
        let clear = true;
        for (let part = 1; part < parts && clear; part += 1)
          clear = isFree(x + (dx * STEP * part) / parts, z + (dz * STEP * part) / parts);
        if (!clear) continue;
        metres[next] = gone;
        const later = Math.floor(gone * 100);
        waiting[later] ??= [];
        waiting[later].push(next);
      }
    }
  const found = metres[cell(to)];
  return Number.isFinite(found) ? found : null;
}

test('a clear way keeps clear, and none over a fine grid is shorter by more than a hundredth', () => {
  let [found, bent] = [0, 0];
  fc.assert(
    fc.property(fc.noShrink(fc.integer({ min: 0, max: 1e9 })), (seed) => {
      const draw = drawFrom(seed);
      const { plan, away } = someRoof(draw);
      const onGrid = (most: number): number => Math.round(draw.between(-most, most) / STEP) * STEP;
      const [from, to]: Spot[] = [
        [onGrid(2.7), onGrid(2.2)],
        [onGrid(2.7), onGrid(2.2)],
      ];
      const standing = { beat: 'begin', headingDegrees: 0, stance: 'stand', holdSeconds: 0 } as const;
      const marks: [Mark, Mark] = [
        { ...standing, id: 'a', at: from },
        { ...standing, id: 'b', at: to },
      ];
      const least = away.map((of) => Math.min(SHOULDER, of(...from), of(...to)));
      // Inside of something the walk is not held to it, and the grid would step over what is rounded so narrowly.
      if (least.some((metres) => metres < 0.1)) return;
      const isFree = (slack: number) => (x: number, z: number) =>
        away.every((of, k) => of(x, z) >= least[k] - slack);
      const through = clearWay(plan, { ...plan.cast[0], marks }, 'a', 'b');
      // Nothing is shorter than straight.
      const grid = through?.length === 0 ? null : gridMetres(isFree(1e-9), from, to);
      if (!through) {
        expect(grid, 'there is none on the grid either').toBeNull();
        return;
      }
      found += 1;
      if (through.length > 0) bent += 1;
      const path = [from, ...through, to];
      expect(walkHits(plan, ...marks, path)).toEqual([]);
      for (let k = 1; k < path.length; k += 1)
        for (let part = 0; part <= 40; part += 1) {
          const [a, b] = [path[k - 1], path[k]];
          const [x, z] = [a[0] + ((b[0] - a[0]) * part) / 40, a[1] + ((b[1] - a[1]) * part) / 40];
          expect(isFree(2e-4)(x, z), `clear at ${x}, ${z}`).toBe(true);
        }
      if (grid !== null) expect(wayMetres(from, through, to)).toBeLessThanOrEqual(grid * 1.01 + 1e-9);
    }),
    { numRuns: 50 },
  );
  expect(found).toBeGreaterThan(25);
  expect(bent).toBeGreaterThan(10);
});
