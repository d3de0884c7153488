import type { ShapeBuilder } from '../../build/shapeBuilder';
import { cross, dot, subtract, type Vec3 } from '../../build/vector';
import { type Corner, tidyOutline, triangulate } from './triangulate';

/** Where a corner (u, v) of an outline lies at a level; a rigid motion, either handed. */
export type Lie = (u: number, v: number, level: number) => Vec3;

/** An outline of [x, z] corners lying level, extruded along y. */
export const LEVEL: Lie = (u, v, level) => [u, level, v];
/** An outline of [z, y] corners standing across x, extruded along x. */
export const ACROSS: Lie = (u, v, level) => [level, v, u];

const isRightHanded = (lie: Lie): boolean => {
  const origin = lie(0, 0, 0);
  const [u, v, w] = [lie(1, 0, 0), lie(0, 1, 0), lie(0, 0, 1)].map((end) => subtract(end, origin));
  return dot(cross(u, v), w) > 0;
};

/** A flat sheet over the outline, facing the way in which the level grows. */
export function sheet(builder: ShapeBuilder, outline: readonly Corner[], level: number, lie: Lie): void {
  const corners = tidyOutline(outline);
  const numbers = corners.map(([u, v]) => builder.corner(lie(u, v, level)));
  const forward = isRightHanded(lie);
  for (const [a, b, c] of triangulate(corners)) {
    if (forward) builder.triangle(numbers[a], numbers[b], numbers[c]);
    else builder.triangle(numbers[a], numbers[c], numbers[b]);
  }
}

/** A closed solid over any simple outline, either winding, between two levels (low < high). */
export function prism(
  builder: ShapeBuilder,
  outline: readonly Corner[],
  low: number,
  high: number,
  lie: Lie,
): void {
  const corners = tidyOutline(outline);
  if (corners.length < 3) return;
  const [bottom, top] = [low, high].map((level) => corners.map(([u, v]) => builder.corner(lie(u, v, level))));
  const forward = isRightHanded(lie);
  const face = (a: number, b: number, c: number) =>
    forward ? builder.triangle(a, b, c) : builder.triangle(a, c, b);
  for (const [a, b, c] of triangulate(corners)) {
    face(top[a], top[b], top[c]);
    face(bottom[a], bottom[c], bottom[b]);
  }
  corners.forEach((_, k) => {
    const next = (k + 1) % corners.length;
    face(bottom[k], bottom[next], top[next]);
    face(bottom[k], top[next], top[k]);
  });
}
