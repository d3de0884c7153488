import type { ShapeBuilder } from '../../build/shapeBuilder';
import { cross, dot, subtract, type Vec3 } from '../../build/vector';
import { type Corner, tidyOutline, triangulate, triangulateHoled } from './triangulate';

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

/** Holes in an outline turn against it. */
const tidyHoles = (holes: readonly (readonly Corner[])[]): readonly (readonly Corner[])[] =>
  holes.map((hole) => tidyOutline(hole).toReversed());

/** A flat sheet over the outline but its holes, facing the way in which the level grows. */
export function sheet(
  builder: ShapeBuilder,
  outline: readonly Corner[],
  level: number,
  lie: Lie,
  holes: readonly (readonly Corner[])[] = [],
): void {
  const corners = tidyOutline(outline);
  const wells = tidyHoles(holes);
  const numbers = [...corners, ...wells.flat()].map(([u, v]) => builder.corner(lie(u, v, level)));
  const forward = isRightHanded(lie);
  for (const [a, b, c] of triangulateHoled(corners, wells)) {
    if (forward) builder.triangle(numbers[a], numbers[b], numbers[c]);
    else builder.triangle(numbers[a], numbers[c], numbers[b]);
  }
}

/** Wells in a prism: outlines inside its own, and the level that each of them goes down to. */
export interface Wells {
  readonly outlines: readonly (readonly Corner[])[];
  readonly floor: number;
}

/** A closed solid over any simple outline, either winding, between two levels (low < high), with wells from above. */
export function prism(
  builder: ShapeBuilder,
  outline: readonly Corner[],
  low: number,
  high: number,
  lie: Lie,
  wells: Wells = { outlines: [], floor: low },
): void {
  const corners = tidyOutline(outline);
  if (corners.length < 3) return;
  const forward = isRightHanded(lie);
  const face = (a: number, b: number, c: number) =>
    forward ? builder.triangle(a, b, c) : builder.triangle(a, c, b);
  const at = (ring: readonly Corner[], level: number): number[] =>
    ring.map(([u, v]) => builder.corner(lie(u, v, level)));
  /** Walls between two levels of a ring; inside of what turns counter-clockwise. */
  const walls = (bottom: readonly number[], top: readonly number[]) =>
    bottom.forEach((_, k) => {
      const next = (k + 1) % bottom.length;
      face(bottom[k], bottom[next], top[next]);
      face(bottom[k], top[next], top[k]);
    });
  const holes = tidyHoles(wells.outlines);
  const [bottom, top] = [at(corners, low), at(corners, high)];
  const rims = holes.map((hole) => at(hole, high));
  const lid = [...top, ...rims.flat()];
  for (const [a, b, c] of triangulateHoled(corners, holes)) face(lid[a], lid[b], lid[c]);
  for (const [a, b, c] of triangulate(corners)) face(bottom[a], bottom[c], bottom[b]);
  walls(bottom, top);
  holes.forEach((hole, k) => {
    const floor = at(hole, wells.floor);
    walls(floor, rims[k]);
    // The floor looks up, and so turns as the outline does.
    const upward = floor.toReversed();
    for (const [a, b, c] of triangulate(hole.toReversed())) face(upward[a], upward[b], upward[c]);
  });
}
