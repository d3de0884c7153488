/**
 * The part of a flat convex polygon where a·x + b·y + c·z ≥ bound, three numbers a corner, written into `into`, which has
 * room for one corner more; how many corners it has.
 */
export function cutPolygon(
  polygon: Float64Array,
  count: number,
  a: number,
  b: number,
  c: number,
  bound: number,
  into: Float64Array,
): number {
  let left = 0;
  for (let k = 0; k < count; k += 1) {
    const at = 3 * k;
    const next = 3 * ((k + 1) % count);
    const here = a * polygon[at] + b * polygon[at + 1] + c * polygon[at + 2] - bound;
    const there = a * polygon[next] + b * polygon[next + 1] + c * polygon[next + 2] - bound;
    if (here >= 0) {
      into[3 * left] = polygon[at];
      into[3 * left + 1] = polygon[at + 1];
      into[3 * left + 2] = polygon[at + 2];
      left += 1;
    }
    if (here >= 0 !== there >= 0) {
      const share = here / (here - there);
      for (let axis = 0; axis < 3; axis += 1)
        into[3 * left + axis] = polygon[at + axis] + (polygon[next + axis] - polygon[at + axis]) * share;
      left += 1;
    }
  }
  return left;
}
