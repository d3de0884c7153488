import type { Placement } from '../../build/placement';
import { add, cross, dot, length, scale, subtract, unit, type Vec3 } from '../../build/vector';

const fromAxes = (x: Vec3, y: Vec3, z: Vec3, origin: Vec3): Placement => [
  x[0],
  y[0],
  z[0],
  origin[0],
  x[1],
  y[1],
  z[1],
  origin[1],
  x[2],
  y[2],
  z[2],
  origin[2],
];

/** What is left of `v` square to the unit vector `axis`; any square direction where nothing is left. */
export function squareTo(v: Vec3, axis: Vec3): Vec3 {
  const rest = subtract(v, scale(axis, dot(v, axis)));
  if (length(rest) > 1e-6) return unit(rest);
  return unit(cross(axis, Math.abs(axis[0]) < 0.9 ? [1, 0, 0] : [0, 0, 1]));
}

/** A limb's frame: it runs down its own −y along `down`, its front (−z) as near `ahead` as may be. */
export function facing(origin: Vec3, down: Vec3, ahead: Vec3): Placement {
  const y = scale(down, -1);
  const z = squareTo(scale(ahead, -1), y);
  return fromAxes(cross(y, z), y, z, origin);
}

/** A limb's frame by the direction of its own x instead. */
export function sided(origin: Vec3, down: Vec3, x: Vec3): Placement {
  const y = scale(down, -1);
  const side = squareTo(x, y);
  return fromAxes(side, y, cross(side, y), origin);
}

/** The middle joint of a limb of two bones that reaches for a target, bent towards the pole, and where it gets to. */
export function bend(
  root: Vec3,
  target: Vec3,
  first: number,
  second: number,
  pole: Vec3,
): readonly [Vec3, Vec3] {
  const way = subtract(target, root);
  const distance = Math.min(Math.max(length(way), Math.abs(first - second) + 1e-4), first + second - 1e-6);
  const along = unit(way);
  const foot = (distance * distance + first * first - second * second) / (2 * distance);
  const off = Math.sqrt(Math.max(0, first * first - foot * foot));
  const middle = add(add(root, scale(along, foot)), scale(squareTo(pole, along), off));
  return [middle, add(root, scale(along, distance))];
}
