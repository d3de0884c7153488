import { bearingOf, headingWay, metresBetween } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import type { Anchor } from './anchor';
import { windOf } from './compassWords';
import { landmarksNear } from './landmarks';

/** On which side of the line between its anchors a place is. */
export interface Side {
  /** `on the side of the stair house`, or `on the north side of the line between them`. */
  readonly words: string;
  /** A place on that side, as the words mean it. */
  readonly towards: Spot;
}

/** Nearer to the line than this a landmark is on neither side, metres. */
const CLEARLY_METRES = 1;
/** A landmark farther away than this tells nobody a side, metres. */
const SEEN_METRES = 15;

/** Tells the side of a place by a landmark that is well over there, the nearest, or by the compass where there is none. */
export function sideOf(plan: Plan, at: Spot, [one, other]: readonly [Anchor, Anchor]): Side {
  const [a, b] = [one.at, other.at];
  const [right, back] = headingWay(bearingOf(a, b) + 90);
  const off = (spot: Spot): number => (spot[0] - a[0]) * right + (spot[1] - a[1]) * back;
  const sign = off(at) < 0 ? -1 : 1;
  const away = (spot: Spot): number => metresBetween(spot, at);
  const landmark = landmarksNear(plan, at, SEEN_METRES)
    .filter(
      ({ at: spot, pieceId }) =>
        pieceId !== one.pieceId &&
        pieceId !== other.pieceId &&
        off(spot) * sign >= CLEARLY_METRES &&
        away(spot) <= SEEN_METRES,
    )
    .sort((p, q) => away(p.at) - away(q.at))[0];
  if (landmark) return { words: `on the side of ${landmark.name}`, towards: landmark.at };
  const heading = bearingOf(a, b) + 90 * sign;
  return {
    words: `on the ${windOf(heading, plan.place.northDegrees)} side of the line between them`,
    towards: [at[0] + sign * right, at[1] + sign * back],
  };
}
