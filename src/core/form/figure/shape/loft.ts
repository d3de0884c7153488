import type { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';

/** Corners around one section of a solid; a single corner closes it to a point. */
export type Ring = readonly Vec3[];

const middleOf = (ring: Ring): Vec3 => {
  let [x, y, z] = [0, 0, 0];
  for (const p of ring) {
    x += p[0];
    y += p[1];
    z += p[2];
  }
  return [x / ring.length, y / ring.length, z / ring.length];
};

/** Six times the signed volume of a tetrahedron with its tip at the origin. */
const volume = (a: Vec3, b: Vec3, c: Vec3): number =>
  a[0] * (b[1] * c[2] - b[2] * c[1]) +
  a[1] * (b[2] * c[0] - b[0] * c[2]) +
  a[2] * (b[0] * c[1] - b[1] * c[0]);

/**
 * Adds one closed solid through rings of equal count. Ends that are not points get a cap, or meet where `endless`.
 * Whichever way round the rings were written, its triangles come to face outwards.
 */
export function loft(builder: ShapeBuilder, rings: readonly Ring[], endless = false): void {
  const points: Vec3[] = [];
  const faces: [number, number, number][] = [];
  const rows = rings.map((ring) => ring.map((p) => points.push(p) - 1));
  const joinToPoint = (tip: number, row: readonly number[], turned: boolean) => {
    row.forEach((corner, k) => {
      const next = row[(k + 1) % row.length];
      faces.push(turned ? [tip, next, corner] : [tip, corner, next]);
    });
  };
  for (let r = 0; r + (endless ? 0 : 1) < rows.length; r += 1) {
    const [lower, upper] = [rows[r], rows[(r + 1) % rows.length]];
    if (lower.length === 1) joinToPoint(lower[0], upper, true);
    else if (upper.length === 1) joinToPoint(upper[0], lower, false);
    else {
      lower.forEach((corner, k) => {
        const next = (k + 1) % lower.length;
        faces.push([corner, lower[next], upper[next]], [corner, upper[next], upper[k]]);
      });
    }
  }
  const [first, last] = [rows[0], rows[rows.length - 1]];
  if (first.length > 1 && !endless) joinToPoint(points.push(middleOf(rings[0])) - 1, first, true);
  if (last.length > 1 && !endless)
    joinToPoint(points.push(middleOf(rings[rings.length - 1])) - 1, last, false);
  let sum = 0;
  for (const [a, b, c] of faces) sum += volume(points[a], points[b], points[c]);
  const corners = points.map((p) => builder.corner(p));
  for (const [a, b, c] of faces) {
    if (sum >= 0) builder.triangle(corners[a], corners[b], corners[c]);
    else builder.triangle(corners[a], corners[c], corners[b]);
  }
}
