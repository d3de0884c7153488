import { atan2, cos, hypot, sin } from '../units/steadyMath';
import type { Spot } from './schema/numbers';

const RADIANS = Math.PI / 180;

/** Compass bearing from one place to another, 0 ≤ b < 360 degrees, clockwise from −z seen from above; 0 for none. */
export function bearingOf(from: Spot, to: Spot): number {
  const degrees = atan2(to[0] - from[0], from[1] - to[1]) / RADIANS;
  return degrees < 0 ? degrees + 360 : degrees + 0;
}

/** The place so many metres away along a compass bearing in degrees. */
export function spotFrom(from: Spot, bearingDegrees: number, metres: number): Spot {
  const [east, south] = headingWay(bearingDegrees);
  return [from[0] + east * metres, from[1] + south * metres];
}

/** One metre along a compass bearing as [x, z]; exact at quarter turns. */
export function headingWay(bearingDegrees: number): readonly [number, number] {
  const quarters = (((bearingDegrees / 90) % 4) + 4) % 4;
  if (quarters === 0) return [0, -1];
  if (quarters === 1) return [1, 0];
  if (quarters === 2) return [0, 1];
  if (quarters === 3) return [-1, 0];
  return [sin(bearingDegrees * RADIANS), -cos(bearingDegrees * RADIANS)];
}

/** Metres between two places. */
export const metresBetween = (a: Spot, b: Spot): number => hypot(b[0] - a[0], b[1] - a[1]);

/** The straight pieces of a run in order; a closed one ends with the piece back to its first corner. */
export function legsOf(path: readonly Spot[], closed: boolean): readonly (readonly [Spot, Spot])[] {
  const legs = path.slice(1).map((corner, index) => [path[index], corner] as const);
  return closed && path.length > 2 ? [...legs, [path[path.length - 1], path[0]] as const] : legs;
}

/** Length of a run along its corners, metres. */
export function runLength(path: readonly Spot[], closed: boolean): number {
  return legsOf(path, closed).reduce((sum, [from, to]) => sum + metresBetween(from, to), 0);
}

/** A place on a run, and the way that the run goes there. */
export interface SpotAlong {
  readonly spot: Spot;
  readonly bearingDegrees: number;
}

/** The place so many metres along a run from its first corner; before the start and past the end it is the end's. */
export function spotAlong(path: readonly Spot[], closed: boolean, metres: number): SpotAlong {
  const legs = legsOf(path, closed).filter(([from, to]) => metresBetween(from, to) > 0);
  let left = Math.max(metres, 0);
  for (const [index, [from, to]] of legs.entries()) {
    const length = metresBetween(from, to);
    if (left <= length || index === legs.length - 1) {
      const share = Math.min(left / length, 1);
      return {
        spot: [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share],
        bearingDegrees: bearingOf(from, to),
      };
    }
    left -= length;
  }
  return { spot: path[0] ?? [0, 0], bearingDegrees: 0 };
}

/** How far along a run the place nearest to a spot lies, metres from the first corner. */
export function alongOf(path: readonly Spot[], closed: boolean, spot: Spot): number {
  let best = 0;
  let nearest = Number.POSITIVE_INFINITY;
  let before = 0;
  for (const [from, to] of legsOf(path, closed)) {
    const length = metresBetween(from, to);
    const along =
      length === 0
        ? 0
        : Math.min(
            Math.max(
              ((spot[0] - from[0]) * (to[0] - from[0]) + (spot[1] - from[1]) * (to[1] - from[1])) / length,
              0,
            ),
            length,
          );
    const share = length === 0 ? 0 : along / length;
    const away = metresBetween(spot, [
      from[0] + (to[0] - from[0]) * share,
      from[1] + (to[1] - from[1]) * share,
    ]);
    if (away < nearest) {
      nearest = away;
      best = before + along;
    }
    before += length;
  }
  return best;
}
