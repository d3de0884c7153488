import type { Spot } from '../../../plan/schema/numbers';
import type { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import { type Mitre, mitresOf, tidyPath } from './path';

/** A corner of a run's cross-section: metres to the right of the path, and height in the world. */
export type SectionCorner = readonly [right: number, height: number];

/**
 * A closed solid of a convex section along a path, mitred at the corners. The section turns counter-clockwise as
 * seen by one who walks the path. A path without length gives nothing.
 */
export function run(
  builder: ShapeBuilder,
  path: readonly Spot[],
  closed: boolean,
  section: readonly SectionCorner[],
): void {
  const tidy = tidyPath(path, closed);
  if (tidy.corners.length < 2) return;
  const rows = mitresOf(tidy.corners, tidy.closed).map((mitre) =>
    section.map((corner) => builder.corner(sectionCorner(mitre, corner))),
  );
  const size = section.length;
  rows.forEach((row, k) => {
    const next = rows[k + 1] ?? (tidy.closed ? rows[0] : null);
    if (!next) return;
    for (let side = 0; side < size; side += 1) {
      const beside = (side + 1) % size;
      builder.triangle(row[side], next[side], next[beside]).triangle(row[side], next[beside], row[beside]);
    }
  });
  if (tidy.closed) return;
  const [first, last] = [rows[0], rows[rows.length - 1]];
  for (let side = 1; side + 1 < size; side += 1) {
    builder.triangle(first[0], first[side], first[side + 1]);
    builder.triangle(last[0], last[side + 1], last[side]);
  }
}

function sectionCorner({ at, right }: Mitre, [aside, height]: SectionCorner): Vec3 {
  return [at[0] + right[0] * aside, height, at[1] + right[1] * aside];
}

/** An upright rectangle of a section, centred on the path. */
export const uprightSection = (thickness: number, low: number, high: number): readonly SectionCorner[] => [
  [-thickness / 2, low],
  [thickness / 2, low],
  [thickness / 2, high],
  [-thickness / 2, high],
];
