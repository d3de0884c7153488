import { cos, sin } from '../../units/steadyMath';
/** Small vectors as tuples: the shapes are built once and kept, so clarity counts for more than speed here. */
export type Vec3 = readonly [number, number, number];

/** Straight up. */
export const UP: Vec3 = [0, 1, 0];

/** Sum, difference, multiple, products, length of small vectors. */
export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
/** Product of the way from one place to another with a vector, without a list for the way: boxes ask it by the million. */
export const dotFrom = (from: Vec3, to: Vec3, a: Vec3): number =>
  (to[0] - from[0]) * a[0] + (to[1] - from[1]) * a[1] + (to[2] - from[2]) * a[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec3): number => Math.sqrt(dot(a, a));
/** Unit vector along `a`; +x for a vector of no length, so that nothing becomes NaN. */
export const unit = (a: Vec3): Vec3 => {
  const size = length(a);
  return size > 0 ? scale(a, 1 / size) : [1, 0, 0];
};
/** The place a share of the way from a to b. */
export const mix = (a: Vec3, b: Vec3, share: number): Vec3 => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
  a[2] + (b[2] - a[2]) * share,
];
/** Two unit vectors that make a right-handed frame with the unit vector `axis` as the third. */
export function frameAround(axis: Vec3): readonly [Vec3, Vec3] {
  const helper: Vec3 = Math.abs(axis[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0];
  const side = unit(cross(helper, axis));
  return [side, cross(axis, side)];
}

const RADIANS = Math.PI / 180;
/** From degrees. */
export const radians = (degrees: number): number => degrees * RADIANS;

/** Unit vector of a compass heading (clockwise from −z) and a tilt (up-positive), both in degrees. */
export function directionOf(headingDegrees: number, tiltDegrees = 0): Vec3 {
  const heading = radians(headingDegrees);
  const tilt = radians(tiltDegrees);
  const level = cos(tilt);
  return [sin(heading) * level, sin(tilt), -cos(heading) * level];
}
