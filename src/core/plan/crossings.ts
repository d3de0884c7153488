import type { Spot } from './schema/numbers';

/** Twice the signed area of three places. */
const side = (a: Spot, b: Spot, c: Spot): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Whether two straight pieces cross in a place that is inside both. */
const cross = (a: Spot, b: Spot, c: Spot, d: Spot): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;

/** Whether an edge of one closed outline crosses an edge of another, or of itself; edges that only touch do not. */
export function crosses(first: readonly Spot[], second: readonly Spot[]): boolean {
  return first.some((a, index) => {
    const b = first[(index + 1) % first.length];
    return second.some((c, other) => cross(a, b, c, second[(other + 1) % second.length]));
  });
}
