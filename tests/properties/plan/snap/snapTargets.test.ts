import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Spot } from '../../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { catchNear, snapSpot } from '../../../../src/core/plan/snap/snapSpot';
import { snapTargets } from '../../../../src/core/plan/snap/snapTargets';
import type { SnapRequest } from '../../../../src/core/plan/snap/types';
import { crowdedPlan, randomPlan } from '../../../plans/crowd';
import { type Draw, drawFrom } from '../../../plans/draw';
import { fullRoof } from '../../../plans/fullRoof';
import { cases } from '../../../thorough';

/** A smaller seed is no simpler case. */
const SEEDS = fc.noShrink(fc.integer({ min: 0, max: 1e9 }));
const CROWD = crowdedPlan(150, 1, 4, 10);
const EVERYWHERE = Number.POSITIVE_INFINITY;

const somePlan = (draw: Draw): Plan =>
  draw.chance(0.4) ? CROWD : draw.chance(0.3) ? fullRoof() : randomPlan(draw.whole(0, 1e6));

test('what comes near a place is all there, in the order of the plan', () => {
  fc.assert(
    fc.property(SEEDS, (seed) => {
      const draw = drawFrom(seed);
      const { around } = snapTargets(somePlan(draw));
      const all = around([0, 0], EVERYWHERE);
      const [at, metres]: [Spot, number] = [
        [draw.between(-30, 30), draw.between(-20, 20)],
        draw.between(0, 6),
      ];
      const near = around(at, metres);
      const [edges, points] = [new Set(near.edges), new Set(near.points)];
      expect(all.edges.filter((edge) => edges.has(edge))).toEqual(near.edges);
      expect(all.points.filter((point) => points.has(point))).toEqual(near.points);
      for (const point of all.points)
        if (Math.hypot(point.at[0] - at[0], point.at[1] - at[1]) <= metres)
          expect(points.has(point), point.key).toBe(true);
      for (const edge of all.edges)
        for (let share = 0; share <= 1; share += 1 / 64) {
          const x = edge.from[0] + (edge.to[0] - edge.from[0]) * share;
          const z = edge.from[1] + (edge.to[1] - edge.from[1]) * share;
          if (Math.hypot(x - at[0], z - at[1]) <= metres) expect(edges.has(edge), edge.key).toBe(true);
        }
    }),
    { numRuns: cases(150) },
  );
});

test('a hand on its way catches what it would catch were it asked of the whole roof', () => {
  fc.assert(
    fc.property(SEEDS, (seed) => {
      const draw = drawFrom(seed);
      const { around, axisDegrees } = snapTargets(somePlan(draw));
      const all = around([0, 0], EVERYWHERE);
      let at: Spot = [draw.between(-14, 14), draw.between(-10, 10)];
      let held: readonly string[] = [];
      const from = draw.chance(0.5) ? ([draw.between(-14, 14), draw.between(-10, 10)] as const) : null;
      const straight = draw.chance(0.3);
      for (let step = 0; step < 12; step += 1) {
        const request: SnapRequest = {
          around,
          at,
          from,
          held,
          straight,
          axisDegrees,
          grid: draw.pick([null, 0.1, 0.5]),
          reach: draw.pick([0.05, 0.3, 1]),
          square: [{ degrees: 30, name: 'the last leg' }],
          gaps: draw.chance(0.3) ? [{ metres: draw.between(0.2, 22), word: 'same gap' }] : [],
          inLine: draw.chance(0.8),
        };
        const plainly: SnapRequest = { ...request, around: () => all };
        expect(catchNear(request)).toEqual(catchNear(plainly));
        const found = snapSpot(request);
        expect(found).toEqual(snapSpot(plainly));
        held = found.why.map(({ key }) => key);
        // Along what it is held by, now and then a long way.
        const far = draw.pick([0.05, 0.4, 20]);
        at = [found.at[0] + draw.pick([0, far, -far]), found.at[1] + draw.pick([0, far, -far])];
      }
    }),
    { numRuns: cases(90) },
  );
});
