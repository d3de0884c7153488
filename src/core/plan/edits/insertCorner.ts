import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { cornersOf, stayingPut, withCorners } from './corners';
import type { CornerArgs } from './setCorner';
import { tidySpot } from './tidy';

/** Puts a corner into a run, an outline, a hole or a cable, behind the corner of that index. Openings stay put. */
export function insertCorner(plan: Plan, { id, index, hole, at }: CornerArgs & { readonly at: Spot }): Plan {
  const corners = cornersOf(plan, id, hole);
  if (!corners?.spots[index]) return plan;
  // Behind the last corner of an open run would be another end, which a plugged cable has already.
  if (index === corners.spots.length - 1 && !corners.closed) return plan;
  const spots = corners.spots.toSpliced(index + 1, 0, tidySpot(at));
  return withCorners(plan, { id, hole, spots, remap: stayingPut });
}
