import type { Spot } from '../../../plan/schema/numbers';
import { apart } from './path';

/** Edges and corners nearer to each other than this touch, metres. */
const TOUCHING_METRES = 1e-4;

type Outline = readonly Spot[];

/**
 * Those holes of a deck that can be cut: outlines of at least three corners that cross neither themselves nor the
 * deck's edge nor one another, and lie inside the deck and outside of the holes before them. The rest is left whole.
 */
export function holesThatFit(outline: Outline, holes: readonly Outline[]): readonly Outline[] {
  const fitting: Outline[] = [];
  for (const drawn of holes) {
    const hole = drawn.filter((spot, k) => apart(spot, drawn[(k + drawn.length - 1) % drawn.length]) > 1e-6);
    if (hole.length < 3 || foldsOver(hole)) continue;
    if (!hole.every((spot) => surrounds(outline, spot)) || meets(hole, outline)) continue;
    const isFree = fitting.every(
      (other) => !meets(hole, other) && !surrounds(other, hole[0]) && !surrounds(hole, other[0]),
    );
    if (isFree) fitting.push(hole);
  }
  return fitting;
}

const edgesOf = (outline: Outline): readonly (readonly [Spot, Spot])[] =>
  outline.map((from, k) => [from, outline[(k + 1) % outline.length]] as const);

/** Whether a place lies inside an outline, by the edges to its right. */
function surrounds(outline: Outline, [x, z]: Spot): boolean {
  let isInside = false;
  for (const [a, b] of edgesOf(outline)) {
    if (a[1] > z === b[1] > z) continue;
    if (x < a[0] + ((z - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) isInside = !isInside;
  }
  return isInside;
}

const side = (a: Spot, b: Spot, p: Spot): number =>
  (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);

/** How far a place lies from a straight piece, metres. */
function away(p: Spot, a: Spot, b: Spot): number {
  const [x, z] = [b[0] - a[0], b[1] - a[1]];
  const square = x * x + z * z;
  const share = square === 0 ? 0 : Math.min(Math.max(((p[0] - a[0]) * x + (p[1] - a[1]) * z) / square, 0), 1);
  return apart(p, [a[0] + x * share, a[1] + z * share]);
}

/** Whether two straight pieces cross or touch. */
const touch = ([a, b]: readonly [Spot, Spot], [c, d]: readonly [Spot, Spot]): boolean =>
  (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) ||
  Math.min(away(a, c, d), away(b, c, d), away(c, a, b), away(d, a, b)) < TOUCHING_METRES;

const meets = (one: Outline, other: Outline): boolean =>
  edgesOf(one).some((edge) => edgesOf(other).some((against) => touch(edge, against)));

/** Whether an outline crosses or touches itself other than where one edge goes on in the next. */
function foldsOver(outline: Outline): boolean {
  const edges = edgesOf(outline);
  return edges.some((edge, k) =>
    edges.some((other, n) => n > k + 1 && !(k === 0 && n === edges.length - 1) && touch(edge, other)),
  );
}
