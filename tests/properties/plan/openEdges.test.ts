import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { obstaclesOn } from '../../../src/core/plan/walkWays/obstacles';
import {
  LEAST_GUARD_METRES,
  type NearEdge,
  openEdgeNear,
  openEdgesOn,
} from '../../../src/core/plan/walkWays/openEdges';
import {
  between,
  fromOutline,
  fromPiece,
  mayMeet,
  nearestShare,
} from '../../../src/core/plan/walkWays/planar';
import type { Floor } from '../../../src/core/plan/walkWays/types';
import { randomPlan } from '../../plans/crowd';
import { drawFrom } from '../../plans/draw';
import { cases } from '../../thorough';

/** The same in the plain way: every piece of every edge, and every guard there is. */
function plainly(plan: Plan, at: Spot, floor: Floor, within: number, raised: number): NearEdge | null {
  const guards = obstaclesOn(plan, floor).filter(
    ({ kind, topMetres, bounds }) =>
      kind === 'solid' &&
      topMetres - floor[1] >= raised + LEAST_GUARD_METRES &&
      mayMeet(at, at, bounds, within),
  );
  let found: NearEdge | null = null;
  for (const { pieceId, kind, from, to, heldMetres } of openEdgesOn(plan, floor, raised)) {
    const metres = fromPiece(from, to, at);
    if (metres > within || (found !== null && metres >= found.metres)) continue;
    if (guards.some(({ outline }) => fromOutline(outline, at, between(from, to, 0.5)) === 0)) continue;
    found = { pieceId, kind, metres, at: between(from, to, nearestShare(from, to, at)), heldMetres };
  }
  return found;
}

test('the nearest open edge is the nearest of all its pieces that nothing guards', () => {
  fc.assert(
    fc.property(fc.noShrink(fc.integer({ min: 0, max: 1e9 })), (seed) => {
      const draw = drawFrom(seed);
      const plan = randomPlan(seed);
      for (let k = 0; k < 40; k += 1) {
        const at: Spot = [draw.between(-9, 9), draw.between(-7, 7)];
        const top = draw.pick([0, 0, 0, 0.2, 1, draw.between(0, 3)]);
        const [within, raised] = [draw.pick([0.3, 1.8, 2, 6]), draw.pick([0, 0, 1.5])];
        const found = openEdgeNear(plan, at, [top, top], within, raised);
        expect(found).toEqual(plainly(plan, at, [top, top], within, raised));
      }
    }),
    { numRuns: cases(120) },
  );
});
