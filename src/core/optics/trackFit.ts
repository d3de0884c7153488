import { rotation } from '../plan/edits/motion';
import { tidyCoordinate, tidyHeading, tidyMetres } from '../plan/edits/tidy';
import { bearingOf, metresBetween, spotFrom } from '../plan/runs';
import type { Spot } from '../plan/schema/numbers';
import { atan2, hypot } from '../units/steadyMath';

/** A track's line over the deck. */
export interface TrackFit {
  /** The middle of it. */
  readonly at: Spot;
  readonly headingDegrees: number;
  readonly lengthMetres: number;
  /** Positive to the right, as a track's; none for a straight one. */
  readonly bendMetres?: number;
}

/** Three places nearer to one line than this, metres, make no arc. */
const STRAIGHT_METRES = 0.02;
const DEGREES = 180 / Math.PI;

const tidySpotOf = ([x, z]: Spot): Spot => [tidyCoordinate(x), tidyCoordinate(z)];
/** Up to a whole decimetre, so that a laid length can be said and carried. */
const whole = (metres: number): number => tidyMetres(Math.ceil(metres * 10 - 1e-6) / 10);

/**
 * A straight line from the first to the last place, long enough that every place lies beside it with `roomMetres` to
 * spare at both ends. Where first and last are one place, a line along `headingDegrees`.
 */
export function straightThrough(
  spots: readonly Spot[],
  roomMetres: number,
  headingDegrees: number,
): TrackFit {
  const [first] = spots;
  const far = spots.reduce(
    (best, spot) => (metresBetween(first, spot) > metresBetween(first, best) ? spot : best),
    first,
  );
  const heading = metresBetween(first, far) > STRAIGHT_METRES ? bearingOf(first, far) : headingDegrees;
  const end = spotFrom(first, heading, 1);
  const [ux, uz] = [end[0] - first[0], end[1] - first[1]];
  const alongs = spots.map(([x, z]) => (x - first[0]) * ux + (z - first[1]) * uz);
  const [low, high] = [Math.min(...alongs), Math.max(...alongs)];
  return {
    at: tidySpotOf(spotFrom(first, heading, (low + high) / 2)),
    headingDegrees: tidyHeading(heading),
    lengthMetres: whole(high - low + 2 * roomMetres),
  };
}

/** The middle of the circle through three places; null where they lie in a line. */
function middleOf([a, b, c]: readonly [Spot, Spot, Spot]): Spot | null {
  const [bx, bz, cx, cz] = [b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]];
  const twice = 2 * (bx * cz - bz * cx);
  const chord = hypot(cx, cz);
  if (chord < STRAIGHT_METRES || Math.abs(twice / 2 / chord) < STRAIGHT_METRES) return null;
  const [bb, cc] = [bx * bx + bz * bz, cx * cx + cz * cz];
  return [a[0] + (cz * bb - bz * cc) / twice, a[1] + (bx * cc - cx * bb) / twice];
}

/** How far one turns about a middle from one place to another, clockwise seen from above, radians in −π..π. */
function turnAbout(middle: Spot, from: Spot, to: Spot): number {
  const [ax, az, bx, bz] = [from[0] - middle[0], from[1] - middle[1], to[0] - middle[0], to[1] - middle[1]];
  return atan2(ax * bz - az * bx, ax * bx + az * bz);
}

/**
 * An arc through three places in their order, with `roomMetres` to spare beyond the first and the last; null where
 * they lie in a line, or on a bend tighter than a track's.
 */
export function arcThrough(places: readonly [Spot, Spot, Spot], roomMetres: number): TrackFit | null {
  const middle = middleOf(places);
  if (!middle) return null;
  const radius = metresBetween(middle, places[0]);
  const turn = turnAbout(middle, places[0], places[1]) + turnAbout(middle, places[1], places[2]);
  if (radius < 0.5 || radius > 1000 || Math.abs(turn) < 1e-6) return null;
  const at = rotation(middle, (turn * DEGREES) / 2).spot(places[0]);
  const side = turn > 0 ? 1 : -1;
  return {
    at,
    headingDegrees: tidyHeading(bearingOf(middle, at) + side * 90),
    lengthMetres: whole(Math.abs(turn) * radius + 2 * roomMetres),
    bendMetres: tidyMetres(side * radius),
  };
}
