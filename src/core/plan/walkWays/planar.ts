import { hypot } from '../../units/steadyMath';
import type { Spot } from '../schema/numbers';

/** A rectangle along the axes: [lowest x, lowest z, highest x, highest z], metres. */
export type Bounds = readonly [number, number, number, number];

/** The bounds of places, so much wider on every side. */
export function boundsOf(spots: readonly Spot[], byMetres = 0): Bounds {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, z] of spots) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, z);
    bottom = Math.max(bottom, z);
  }
  return [left - byMetres, top - byMetres, right + byMetres, bottom + byMetres];
}

/** Whether a straight piece may meet bounds that are so much wider on every side. */
export const mayMeet = (a: Spot, b: Spot, bounds: Bounds, byMetres: number): boolean =>
  Math.max(a[0], b[0]) >= bounds[0] - byMetres &&
  Math.min(a[0], b[0]) <= bounds[2] + byMetres &&
  Math.max(a[1], b[1]) >= bounds[1] - byMetres &&
  Math.min(a[1], b[1]) <= bounds[3] + byMetres;

/** Twice the signed area of three places. */
const side = (a: Spot, b: Spot, c: Spot): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** The share of the way from a to b at which it is nearest to a place. */
export function nearestShare(a: Spot, b: Spot, to: Spot): number {
  const [dx, dz] = [b[0] - a[0], b[1] - a[1]];
  const squared = dx * dx + dz * dz;
  return squared === 0 ? 0 : Math.min(Math.max(((to[0] - a[0]) * dx + (to[1] - a[1]) * dz) / squared, 0), 1);
}

/** The place at a share of the way from a to b. */
export const between = (a: Spot, b: Spot, share: number): Spot => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

/** How far a place is from a straight piece, metres. */
export function fromPiece(a: Spot, b: Spot, to: Spot): number {
  const share = nearestShare(a, b, to);
  return hypot(a[0] + (b[0] - a[0]) * share - to[0], a[1] + (b[1] - a[1]) * share - to[1]);
}

/** How far two straight pieces are from each other, metres; 0 where they cross or touch. */
export function piecesApart(a: Spot, b: Spot, c: Spot, d: Spot): number {
  if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return 0;
  return Math.min(fromPiece(a, b, c), fromPiece(a, b, d), fromPiece(c, d, a), fromPiece(c, d, b));
}

/** Whether a place lies in an outline of corners that goes round clockwise as seen from above, or on its edge. */
const isInside = (outline: readonly Spot[], spot: Spot): boolean =>
  outline.length > 2 &&
  outline.every((corner, k) => side(corner, outline[(k + 1) % outline.length], spot) >= 0);

/**
 * How far a straight piece is from a convex outline, metres, 0 where it touches it. The outline winds so that
 * (x, z) to (−z, x) turns into it; two corners are a straight piece.
 */
export function fromOutline(outline: readonly Spot[], a: Spot, b: Spot): number {
  if (isInside(outline, a) || isInside(outline, b)) return 0;
  let nearest = Number.POSITIVE_INFINITY;
  for (let k = 0; k < outline.length; k += 1)
    nearest = Math.min(nearest, piecesApart(a, b, outline[k], outline[(k + 1) % outline.length]));
  return nearest;
}

/** The shares of the way from a to b, 0 and 1 among them, at which it meets edges of closed outlines, in order. */
export function cutsOf(a: Spot, b: Spot, outlines: readonly (readonly Spot[])[]): readonly number[] {
  const cuts = [0, 1];
  const [dx, dz] = [b[0] - a[0], b[1] - a[1]];
  for (const outline of outlines)
    for (let k = 0; k < outline.length; k += 1) {
      const [c, d] = [outline[k], outline[(k + 1) % outline.length]];
      const [ex, ez] = [d[0] - c[0], d[1] - c[1]];
      const turn = dx * ez - dz * ex;
      if (turn === 0) {
        // Along each other: where the other one begins and ends.
        for (const end of [c, d]) if (fromPiece(a, b, end) < 1e-9) cuts.push(nearestShare(a, b, end));
        continue;
      }
      const share = ((c[0] - a[0]) * ez - (c[1] - a[1]) * ex) / turn;
      const other = ((c[0] - a[0]) * dz - (c[1] - a[1]) * dx) / turn;
      if (share > 0 && share < 1 && other >= -1e-9 && other <= 1 + 1e-9) cuts.push(share);
    }
  return [...new Set(cuts)].sort((one, next) => one - next);
}
