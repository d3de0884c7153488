import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { cornersOf, stayingOnLeg, withCorners } from './corners';
import { plugCable, settlePlugs } from './plugCable';
import { tidySpot } from './tidy';

/** One corner of an item, from 0; of one hole of a deck where `hole` names it. */
export interface CornerArgs {
  readonly id: string;
  readonly index: number;
  readonly hole?: string;
}

/**
 * Moves one corner of a run, an outline, a hole or a cable, or one end of a line, to [x, z], metres. Openings keep
 * their distance from the corner that stays; a plugged end of a cable is pulled out. A corner that would leave a hole
 * outside its deck stays.
 */
export function setCorner(plan: Plan, { id, index, hole, to }: CornerArgs & { readonly to: Spot }): Plan {
  const corners = cornersOf(plan, id, hole);
  if (!corners?.spots[index]) return plan;
  const spots = corners.spots.with(index, tidySpot(to));
  const moved = withCorners(plan, { id, hole, spots, remap: stayingOnLeg });
  if (moved === plan) return plan;
  if (index === 0) return settlePlugs(plugCable(moved, { id, end: 'from', to: null }), id);
  return index === spots.length - 1 ? plugCable(moved, { id, end: 'to', to: null }) : moved;
}
