import type { Plan } from '../schema/plan';
import { cornersOf, stayingPut, withCorners } from './corners';
import { plugCable } from './plugCable';
import type { CornerArgs } from './setCorner';

/**
 * Takes a corner out of a run, an outline, a hole or a cable; openings stay as near as they can. A run keeps two
 * corners, a closed run and an outline three. A cable whose plugged end goes is pulled out.
 */
export function removeCorner(plan: Plan, { id, index, hole }: CornerArgs): Plan {
  const corners = cornersOf(plan, id, hole);
  if (!corners?.spots[index] || corners.spots.length <= (corners.closed ? 3 : 2)) return plan;
  const spots = corners.spots.toSpliced(index, 1);
  const without = withCorners(plan, { id, hole, spots, remap: stayingPut });
  if (without === plan) return plan;
  if (index === 0) return plugCable(without, { id, end: 'from', to: null });
  return index === spots.length ? plugCable(without, { id, end: 'to', to: null }) : without;
}
