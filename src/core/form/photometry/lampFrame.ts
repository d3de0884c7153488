import { cross, length, type Vec3 } from '../build/vector';

/**
 * The lamp's own right and top as seen from behind it. It is level, as a yoke holds it; one that looks straight up or
 * down stands as one that faces −z.
 */
export function lampFrame(direction: Vec3): { readonly right: Vec3; readonly up: Vec3 } {
  const level = length([direction[0], 0, direction[2]]);
  const right: Vec3 = level < 1e-9 ? [1, 0, 0] : [-direction[2] / level, 0, direction[0] / level];
  return { right, up: cross(right, direction) };
}
