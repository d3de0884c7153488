import { hypot } from '../../../units/steadyMath';
/** A corner in a plane. */
export type Corner = readonly [number, number];

/** Twice the signed area of a triangle, positive when a, b, c turn counter-clockwise. */
const turn = (a: Corner, b: Corner, c: Corner): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Signed area by the shoelace formula, positive for a counter-clockwise outline. */
export function signedArea(outline: readonly Corner[]): number {
  let twice = 0;
  outline.forEach((corner, k) => {
    const next = outline[(k + 1) % outline.length];
    twice += corner[0] * next[1] - next[0] * corner[1];
  });
  return twice / 2;
}

/** The outline turning counter-clockwise, without corners that lie on top of the one before. */
export function tidyOutline(outline: readonly Corner[]): readonly Corner[] {
  const distinct = outline.filter((corner, k) => {
    const before = outline[(k + outline.length - 1) % outline.length];
    return hypot(corner[0] - before[0], corner[1] - before[1]) > 1e-6;
  });
  return signedArea(distinct) < 0 ? distinct.toReversed() : distinct;
}

/**
 * Triangles of a simple counter-clockwise outline, as corner numbers, by clipping ears: n − 2 of them, each edge
 * of the outline used once, so that a solid closed with them stays closed. An outline that crosses itself still
 * gives n − 2 triangles, though not its area.
 */
export function triangulate(outline: readonly Corner[]): readonly (readonly [number, number, number])[] {
  const left = outline.map((_, k) => k);
  const triangles: (readonly [number, number, number])[] = [];
  while (left.length > 3) {
    const ear = earOf(outline, left);
    const count = left.length;
    triangles.push([left[(ear + count - 1) % count], left[ear], left[(ear + 1) % count]]);
    left.splice(ear, 1);
  }
  if (left.length === 3) triangles.push([left[0], left[1], left[2]]);
  return triangles;
}

/** The place in `left` of a corner that may be cut off; the widest corner where none may. */
function earOf(outline: readonly Corner[], left: readonly number[]): number {
  const count = left.length;
  let widest = 0;
  let widestTurn = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < count; k += 1) {
    const a = outline[left[(k + count - 1) % count]];
    const b = outline[left[k]];
    const c = outline[left[(k + 1) % count]];
    const size = turn(a, b, c);
    if (size > 0 && left.every((other) => !blocks(outline[other], a, b, c))) return k;
    if (size > widestTurn) [widest, widestTurn] = [k, size];
  }
  return widest;
}

/** Whether a corner lies in the triangle or on its rim, other than at one of the three corners. */
function blocks(p: Corner, a: Corner, b: Corner, c: Corner): boolean {
  if (same(p, a) || same(p, b) || same(p, c)) return false;
  return turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0;
}

const same = (p: Corner, q: Corner): boolean => p[0] === q[0] && p[1] === q[1];
