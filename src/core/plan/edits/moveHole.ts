import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { cornersOf, stayingPut, withCorners } from './corners';
import { tidySpot } from './tidy';

/** Moves a hole of a deck by [x, z], metres; where it would not lie inside, or over another, it stays. */
export function moveHole(
  plan: Plan,
  { id, holeId, by }: { readonly id: string; readonly holeId: string; readonly by: Spot },
): Plan {
  const corners = cornersOf(plan, id, holeId);
  if (!corners) return plan;
  const spots = corners.spots.map(([x, z]) => tidySpot([x + by[0], z + by[1]]));
  return withCorners(plan, { id, hole: holeId, spots, remap: stayingPut });
}
