import type { Mark } from '../../../plan/schema/cast';
import type { Spot } from '../../../plan/schema/numbers';
import { atan2, hypot } from '../../../units/steadyMath';

/** A way over the floor as straight pieces, with how far along it each of its places lies; metres. */
export interface Path {
  readonly places: readonly Spot[];
  readonly along: readonly number[];
  readonly metres: number;
}

/** Places nearer to each other than this are one. */
const SAME_METRES = 0.001;
/** Straight pieces between two places of a curve. */
const PIECES = 24;

const apart = (a: Spot, b: Spot): number => hypot(b[0] - a[0], b[1] - a[1]);

/** Where the way turns by less than this cosine at the place next to its end, the end goes on turning as it does there. */
const GENTLE_COSINE = Math.SQRT1_2;

/**
 * The place that a curve needs past its end. As far on as the next one is, and so that an arc goes on as that arc:
 * the one after next, mirrored in the middle between the end and the next. Where the way turns sharply there, straight
 * on instead, so that it does not swing out at the end.
 */
function beyond(end: Spot, next: Spot, afterNext: Spot): Spot {
  const [dx, dz] = [next[0] - end[0], next[1] - end[1]];
  const [ex, ez] = [afterNext[0] - next[0], afterNext[1] - next[1]];
  const square = dx * dx + dz * dz;
  const along = (dx * ex + dz * ez) / square;
  const cosine = (dx * ex + dz * ez) / Math.sqrt(square * (ex * ex + ez * ez));
  const gentle = Math.min(1, Math.max(0, cosine / GENTLE_COSINE));
  const straight: Spot = [end[0] - dx, end[1] - dz];
  // From `end` to the mirrored place as from `next` to the one after it, with what is along the way turned round.
  const arc: Spot = [end[0] + ex - 2 * along * dx, end[1] + ez - 2 * along * dz];
  return [straight[0] + (arc[0] - straight[0]) * gentle, straight[1] + (arc[1] - straight[1]) * gentle];
}

const between = (a: Spot, b: Spot, from: number, to: number, at: number): Spot => {
  const share = (at - from) / (to - from);
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
};

/**
 * A place on a centripetal Catmull-Rom curve between its two middle places, `share` 0 to 1: with knots as far apart as
 * the root of the distances it has no loops or cusps between places, however unevenly they lie.
 * Source: [centripetal-curve]
 */
function onCurve([p0, p1, p2, p3]: readonly [Spot, Spot, Spot, Spot], share: number): Spot {
  const t1 = Math.sqrt(apart(p0, p1));
  const t2 = t1 + Math.sqrt(apart(p1, p2));
  const t3 = t2 + Math.sqrt(apart(p2, p3));
  const t = t1 + (t2 - t1) * share;
  const [a, b, c] = [between(p0, p1, 0, t1, t), between(p1, p2, t1, t2, t), between(p2, p3, t2, t3, t)];
  return between(between(a, b, 0, t2, t), between(b, c, t1, t3, t), t1, t2, t);
}

function curveThrough(places: readonly Spot[]): Spot[] {
  const last = places.length - 1;
  const curve: Spot[] = [places[0]];
  for (let k = 0; k < last; k += 1) {
    const ends = [
      k > 0 ? places[k - 1] : beyond(places[0], places[1], places[2]),
      places[k],
      places[k + 1],
      k + 1 < last ? places[k + 2] : beyond(places[last], places[last - 1], places[last - 2]),
    ] as const;
    for (let piece = 1; piece < PIECES; piece += 1) curve.push(onCurve(ends, piece / PIECES));
    curve.push(places[k + 1]);
  }
  return curve;
}

/** The way from one mark to the next: straight, through places in straight lines, or on one smooth curve. */
export function pathBetween(from: Spot, to: Mark): Path {
  const wanted: readonly Spot[] = [from, ...(to.way?.through ?? []), to.at];
  const distinct: Spot[] = [from];
  for (const place of wanted) {
    if (apart(distinct[distinct.length - 1], place) > SAME_METRES) distinct.push(place);
  }
  // The end is where the mark is, to the last bit, even where the way comes within a hair of it before.
  if (distinct.length > 1) distinct[distinct.length - 1] = to.at;
  const isCurved = to.way?.line === 'curved' && distinct.length > 2;
  const places = isCurved ? curveThrough(distinct) : distinct;
  const along = [0];
  for (let k = 1; k < places.length; k += 1) along.push(along[k - 1] + apart(places[k - 1], places[k]));
  return { places, along, metres: along[along.length - 1] };
}

/** The piece of a path that holds the place `metres` from its start. */
function pieceAt(along: readonly number[], metres: number): number {
  let low = 0;
  let high = along.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (along[middle] <= metres) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The place `metres` from the start of a path; its ends from beyond them. */
export function placeOn({ places, along, metres: whole }: Path, metres: number): Spot {
  const last = places.length - 1;
  if (last === 0 || metres <= 0) return places[0];
  if (metres >= whole) return places[last];
  const k = pieceAt(along, metres);
  const share = (metres - along[k]) / (along[k + 1] - along[k]);
  const [a, b] = [places[k], places[k + 1]];
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}

/** Compass heading from one place to another, degrees; null where they are the same. */
export function headingBetween(from: Spot, to: Spot): number | null {
  const [dx, dz] = [to[0] - from[0], to[1] - from[1]];
  return hypot(dx, dz) > SAME_METRES ? (atan2(dx, -dz) * 180) / Math.PI : null;
}

/**
 * Compass heading of a path at `metres` from its start, from the place `reachMetres` behind to the one as far ahead:
 * the tangent on a straight piece or an arc, and an even turn round a corner. Null where the two are the same.
 */
export function headingOn(path: Path, metres: number, reachMetres: number): number | null {
  if (path.places.length === 2) return headingBetween(path.places[0], path.places[1]);
  return headingBetween(placeOn(path, metres - reachMetres), placeOn(path, metres + reachMetres));
}
