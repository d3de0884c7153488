import { cos, sin } from '../../units/steadyMath';
import type { Vec3 } from './vector';
import { radians } from './vector';

/** Rows of a 3 × 4 rigid motion, target from source: [m00 m01 m02 tx, m10 …]. */
export type Placement = readonly number[];

/** No motion at all. */
export const AT_ORIGIN: Placement = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];

/**
 * World from a thing's own frame, in which it stands at the origin with y up and faces −z:
 * turned to the compass heading (clockwise seen from above), then moved to `at`.
 */
export function standingAt(at: Vec3, headingDegrees: number): Placement {
  const cosine = cos(radians(headingDegrees));
  const sine = sin(radians(headingDegrees));
  return [cosine, 0, -sine, at[0], 0, 1, 0, at[1], sine, 0, cosine, at[2]];
}

/** A tilt about the own x axis (up-positive for what faces −z), to be applied before a heading. */
export function tiltedBy(tiltDegrees: number): Placement {
  const cosine = cos(radians(tiltDegrees));
  const sine = sin(radians(tiltDegrees));
  return [1, 0, 0, 0, 0, cosine, -sine, 0, 0, sine, cosine, 0];
}

/** A roll about the own z axis, counter-clockwise as seen from +z. */
export function rolledBy(rollDegrees: number): Placement {
  const cosine = cos(radians(rollDegrees));
  const sine = sin(radians(rollDegrees));
  return [cosine, -sine, 0, 0, sine, cosine, 0, 0, 0, 0, 1, 0];
}

/** A move without a turn, metres. */
export const movedBy = (by: Vec3): Placement => [1, 0, 0, by[0], 0, 1, 0, by[1], 0, 0, 1, by[2]];

/** `outer` after `inner`. */
export function compose(outer: Placement, inner: Placement): Placement {
  const product: number[] = [];
  for (let row = 0; row < 3; row += 1) {
    for (let column = 0; column < 4; column += 1) {
      const own = column === 3 ? outer[row * 4 + 3] : 0;
      product.push(
        outer[row * 4] * inner[column] +
          outer[row * 4 + 1] * inner[4 + column] +
          outer[row * 4 + 2] * inner[8 + column] +
          own,
      );
    }
  }
  return product;
}

/** Where a motion takes a place. */
export const moved = (m: Placement, p: Vec3): Vec3 => [
  m[0] * p[0] + m[1] * p[1] + m[2] * p[2] + m[3],
  m[4] * p[0] + m[5] * p[1] + m[6] * p[2] + m[7],
  m[8] * p[0] + m[9] * p[1] + m[10] * p[2] + m[11],
];

/** Turns a direction, without the move. */
export const turned = (m: Placement, p: Vec3): Vec3 => [
  m[0] * p[0] + m[1] * p[1] + m[2] * p[2],
  m[4] * p[0] + m[5] * p[1] + m[6] * p[2],
  m[8] * p[0] + m[9] * p[1] + m[10] * p[2],
];
