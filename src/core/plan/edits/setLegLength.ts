import { bearingOf, metresBetween, spotFrom } from '../runs';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { cornersOf, stayingOnLeg, withCorners } from './corners';
import { kept, sameSpot, tidyMetres, tidySpot } from './tidy';

const SHORTEST_METRES = 0.001;
const LONGEST_METRES = 5000;

/**
 * Makes the straight piece behind a corner so many metres long, from 1 mm: its far end moves along it, in an open run
 * with all corners after that, in a closed one with the next, so that a rectangle stays one. A plugged end of a cable
 * stays.
 */
export function setLegLength(
  plan: Plan,
  {
    id,
    index,
    metres,
    hole,
  }: { readonly id: string; readonly index: number; readonly metres: number; readonly hole?: string },
): Plan {
  const corners = cornersOf(plan, id, hole);
  const from = corners?.spots[index];
  if (!corners || !from) return plan;
  const { spots, closed } = corners;
  const count = spots.length;
  const far = closed ? (index + 1) % count : index + 1;
  const to = spots[far];
  const length = to ? metresBetween(from, to) : 0;
  const wanted = kept(metres, SHORTEST_METRES, LONGEST_METRES);
  if (!to || sameSpot(from, to) || tidyMetres(length) === tidyMetres(wanted)) return plan;
  const end = tidySpot(spotFrom(from, bearingOf(from, to), wanted));
  const by: Spot = [end[0] - to[0], end[1] - to[1]];
  const next = (far + 1) % count;
  const cable = plan.gear.find((gear) => gear.id === id);
  const isHeld = cable?.kind === 'cable' && cable.plugs?.to !== undefined;
  const moves = (at: number): boolean => {
    if (closed) return at === far || at === next;
    return at >= far && !(isHeld && at === count - 1);
  };
  const moved = spots.map((spot, at): Spot => {
    if (!moves(at)) return spot;
    return at === far ? end : tidySpot([spot[0] + by[0], spot[1] + by[1]]);
  });
  return withCorners(plan, { id, hole, spots: moved, remap: stayingOnLeg });
}
