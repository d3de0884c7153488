import { metresBetween } from '../runs';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { kept } from './tidy';
import { changedWay, type WayTo, wayOf } from './ways';

/** Where among the places of a way another one makes it least longer. */
function leastDetour(from: Spot, through: readonly Spot[], to: Spot, at: Spot): number {
  const places = [from, ...through, to];
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k + 1 < places.length; k += 1) {
    const [a, b] = [places[k], places[k + 1]];
    const more = metresBetween(a, at) + metresBetween(at, b) - metresBetween(a, b);
    if (more >= least) continue;
    least = more;
    best = k;
  }
  return best;
}

/**
 * Has the walk to a mark pass a place, [x, z], metres: before the place of that number, else where it makes the walk
 * least longer. The first mark, which nobody walks to, and a way with 40 places stay as they are.
 */
export const addWayPoint = (
  plan: Plan,
  { at, index, ...to }: WayTo & { readonly at: Spot; readonly index?: number },
): Plan =>
  changedWay(plan, to, (through, line, from, until) => {
    const place = kept(Math.floor(index ?? leastDetour(from, through, until, at)), 0, through.length);
    return wayOf(through.toSpliced(place, 0, at), line);
  });
