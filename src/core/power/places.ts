import { pathBetween } from '../form/figure/way/path';
import { anchorOf } from '../plan/edits/anchorOf';
import type { Cable } from '../plan/edits/plugCable';
import { legsOf, metresBetween } from '../plan/runs';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import { between, cutsOf, piecesApart } from '../plan/walkWays/planar';
import { isMirroring, wetnessAt } from '../plan/wetness';

/** Somebody walks this far to either side of the middle of their way, metres. Source: common practice, no source */
const WALK_METRES = 0.3;

/** How many metres of a straight piece lie on ground that is wet. */
function wetMetresBetween(plan: Plan, a: Spot, b: Spot): number {
  const outlines = (plan.ground.areas ?? []).map(({ outline }) => outline);
  const cuts = cutsOf(a, b, outlines);
  const length = metresBetween(a, b);
  return cuts.slice(1).reduce((sum, until, k) => {
    const middle = between(a, b, (cuts[k] + until) / 2);
    return isMirroring(wetnessAt(plan, middle)) ? sum + (until - cuts[k]) * length : sum;
  }, 0);
}

/** How many metres of a cable lie on ground that is wet. */
export const wetMetresOf = (plan: Plan, { path }: Cable): number =>
  legsOf(path, false).reduce((sum, [a, b]) => sum + wetMetresBetween(plan, a, b), 0);

/** Whether something stands on ground that is wet. */
export function standsWet(plan: Plan, id: string): boolean {
  const spot = anchorOf(plan, id);
  return spot !== null && isMirroring(wetnessAt(plan, spot));
}

/** The straight pieces of a performer's ways from mark to mark. */
export function walkPieces(
  plan: Plan,
): readonly { readonly performerId: string; readonly piece: readonly [Spot, Spot] }[] {
  const timeOf = new Map(plan.beats.map(({ id, atSeconds }) => [id, atSeconds]));
  return plan.cast.flatMap(({ id, marks }) => {
    const inTime = marks.toSorted((a, b) => (timeOf.get(a.beat) ?? 0) - (timeOf.get(b.beat) ?? 0));
    return inTime
      .slice(1)
      .flatMap((mark, k) =>
        legsOf(pathBetween(inTime[k].at, mark).places, false).map((piece) => ({ performerId: id, piece })),
      );
  });
}

/** The performers who walk over a cable, each once. */
export function walkersOver(plan: Plan, cable: Cable): readonly string[] {
  const found = new Set<string>();
  const legs = legsOf(cable.path, false);
  for (const { performerId, piece } of walkPieces(plan))
    if (legs.some(([a, b]) => piecesApart(a, b, piece[0], piece[1]) < WALK_METRES)) found.add(performerId);
  return [...found];
}
