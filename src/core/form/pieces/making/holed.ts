import type { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';

/** Four corners of a rectangle. */
export type Rectangle = readonly [Vec3, Vec3, Vec3, Vec3];

/** The rectangle turned over: it faces the other way. */
export const turnedOver = ([a, b, c, d]: Rectangle): Rectangle => [d, c, b, a];

/** A face between two rectangles, one inside the other; corners counter-clockwise as seen from outside. */
export function rim(builder: ShapeBuilder, outer: Rectangle, inner: Rectangle): void {
  for (let k = 0; k < 4; k += 1) {
    const next = (k + 1) % 4;
    builder.quad(outer[k], outer[next], inner[next], inner[k]);
  }
}

/** The four walls of a hole that leads from one rectangle back to another, facing into the hole. */
export function lining(builder: ShapeBuilder, front: Rectangle, back: Rectangle): void {
  for (let k = 0; k < 4; k += 1) {
    const next = (k + 1) % 4;
    builder.quad(front[k], front[next], back[next], back[k]);
  }
}

/** An upright rectangle at a depth z that faces −z. */
export const facing = (x: readonly [number, number], y: readonly [number, number], z: number): Rectangle => [
  [x[1], y[0], z],
  [x[0], y[0], z],
  [x[0], y[1], z],
  [x[1], y[1], z],
];

/** A level rectangle at a height y that faces up; its third edge is the one towards −z. */
export const lying = (x: readonly [number, number], z: readonly [number, number], y: number): Rectangle => [
  [x[0], y, z[1]],
  [x[1], y, z[1]],
  [x[1], y, z[0]],
  [x[0], y, z[0]],
];

/** A closed frame: a flat box facing −z with a rectangular hole through it. */
export function frame(
  builder: ShapeBuilder,
  outer: { readonly x: readonly [number, number]; readonly y: readonly [number, number] },
  inner: { readonly x: readonly [number, number]; readonly y: readonly [number, number] },
  z: readonly [number, number],
): void {
  const [front, back] = z.map((depth) => facing(outer.x, outer.y, depth));
  const [holeFront, holeBack] = z.map((depth) => facing(inner.x, inner.y, depth));
  rim(builder, front, holeFront);
  rim(builder, turnedOver(back), turnedOver(holeBack));
  lining(builder, holeFront, holeBack);
  lining(builder, turnedOver(front), turnedOver(back));
}
