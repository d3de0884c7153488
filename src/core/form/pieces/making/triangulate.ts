import { hypot } from '../../../units/steadyMath';
/** A corner in a plane. */
export type Corner = readonly [number, number];
/** A triangle as the numbers of its corners. */
export type Triangle = readonly [number, number, number];

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
export const triangulate = (outline: readonly Corner[]): readonly Triangle[] =>
  clipEars(
    outline,
    outline.map((_, k) => k),
  );

/**
 * Triangles of a counter-clockwise outline with clockwise holes that lie inside it, none in or over another. Corners
 * are numbered through: the outline's first, then those of each hole. Each edge of outline and holes is used once.
 */
export function triangulateHoled(
  outline: readonly Corner[],
  holes: readonly (readonly Corner[])[],
): readonly Triangle[] {
  const corners = [...outline, ...holes.flat()];
  let first = outline.length;
  const rings = holes.map((hole) => {
    const ring = hole.map((_, k) => first + k);
    first += hole.length;
    return ring;
  });
  return clipEars(
    corners,
    bridged(
      corners,
      outline.map((_, k) => k),
      rings,
    ),
  );
}

/**
 * One ring that walks the outline and, over a bridge there and back, each hole. Holes are taken from the right to the
 * left, each bridged from its rightmost corner to the nearest corner of the ring that nothing stands before.
 */
function bridged(
  corners: readonly Corner[],
  outline: readonly number[],
  holes: readonly (readonly number[])[],
): readonly number[] {
  const started = holes.map((ring) => {
    const start = ring.reduce((best, k, at) => (isRightOf(corners[k], corners[ring[best]]) ? at : best), 0);
    return [...ring.slice(start), ...ring.slice(0, start)];
  });
  started.sort((a, b) => (isRightOf(corners[a[0]], corners[b[0]]) ? -1 : 1));
  let ring = outline;
  for (const hole of started) {
    const from = hole[0];
    const at = bridgeEnd(corners, ring, corners[from]);
    ring = [...ring.slice(0, at + 1), ...hole, from, ...ring.slice(at)];
  }
  return ring;
}

const isRightOf = (a: Corner, b: Corner): boolean => a[0] > b[0] || (a[0] === b[0] && a[1] > b[1]);

/** The place in the ring of the corner that a bridge from `from` ends at: the nearest one in view, not to its left. */
function bridgeEnd(corners: readonly Corner[], ring: readonly number[], from: Corner): number {
  const far = (at: number): number => {
    const [x, y] = [corners[ring[at]][0] - from[0], corners[ring[at]][1] - from[1]];
    return x * x + y * y;
  };
  const order = ring.map((_, at) => at).filter((at) => isRightOf(corners[ring[at]], from));
  order.sort((a, b) => far(a) - far(b));
  for (const at of order) {
    if (!opensTowards(corners, ring, at, from)) continue;
    if (!isBarred(corners, ring, corners[ring[at]], from)) return at;
  }
  return order[0] ?? 0;
}

/** Whether the inside of the ring, at one of its corners, lies towards a place. */
function opensTowards(corners: readonly Corner[], ring: readonly number[], at: number, to: Corner): boolean {
  const count = ring.length;
  const before = corners[ring[(at + count - 1) % count]];
  const here = corners[ring[at]];
  const after = corners[ring[(at + 1) % count]];
  const [afterSide, beforeSide] = [turn(here, after, to), turn(before, here, to)];
  return turn(before, here, after) > 0 ? afterSide > 0 && beforeSide > 0 : afterSide > 0 || beforeSide > 0;
}

/** Whether an edge or a corner of the ring lies on the way between two places, other than at its ends. */
function isBarred(corners: readonly Corner[], ring: readonly number[], a: Corner, b: Corner): boolean {
  return ring.some((_, k) => {
    const c = corners[ring[k]];
    const d = corners[ring[(k + 1) % ring.length]];
    if (liesBetween(c, a, b)) return true;
    if (same(c, a) || same(d, a) || same(c, b) || same(d, b)) return false;
    return turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0;
  });
}

/** Whether a place lies on the straight way between two others. */
const liesBetween = (p: Corner, a: Corner, b: Corner): boolean =>
  !same(p, a) &&
  !same(p, b) &&
  turn(a, b, p) === 0 &&
  (p[0] - a[0]) * (p[0] - b[0]) + (p[1] - a[1]) * (p[1] - b[1]) < 0;

/** Clips ears off a ring of corner numbers until a triangle is left. */
function clipEars(corners: readonly Corner[], ring: readonly number[]): readonly Triangle[] {
  const left = [...ring];
  const triangles: Triangle[] = [];
  while (left.length > 3) {
    const ear = earOf(corners, left);
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
  // Only where the outline turns in, or goes straight on, can it reach into an ear.
  const inward = left.filter((at, k) => {
    const [before, after] = [left[(k + count - 1) % count], left[(k + 1) % count]];
    return turn(outline[before], outline[at], outline[after]) <= 0;
  });
  let widest = 0;
  let widestTurn = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < count; k += 1) {
    const a = outline[left[(k + count - 1) % count]];
    const b = outline[left[k]];
    const c = outline[left[(k + 1) % count]];
    const size = turn(a, b, c);
    if (size > 0 && inward.every((other) => !blocks(outline[other], a, b, c))) return k;
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
