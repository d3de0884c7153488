/** A place seen from above: [x to the right, z towards the foot of the sheet], metres; or the same in pixels. */
export type Spot = readonly [number, number];

/** [left, top, right, bottom] in the unit of the spots. */
export type Bounds = readonly [number, number, number, number];

/** A circle around something, in the unit of the spots. */
export interface Ring {
  readonly middle: Spot;
  readonly radius: number;
}

export const minus = (a: Spot, b: Spot): Spot => [a[0] - b[0], a[1] - b[1]];
export const plus = (a: Spot, b: Spot): Spot => [a[0] + b[0], a[1] + b[1]];
export const times = (a: Spot, by: number): Spot => [a[0] * by, a[1] * by];
export const distance = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
export const between = (a: Spot, b: Spot, share: number): Spot => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

/** Unit vector of a compass heading, clockwise from up the sheet, degrees. */
export function towards(headingDegrees: number): Spot {
  const radians = (headingDegrees * Math.PI) / 180;
  return [Math.sin(radians), -Math.cos(radians)];
}

/** Compass heading of a vector, degrees in (−180, 180]. */
export const headingOf = (vector: Spot): number => (Math.atan2(vector[0], -vector[1]) * 180) / Math.PI;

/** A point of a thing's own plan (it faces −z) where the thing stands at `at`, turned to its heading. */
export function standing(at: Spot, headingDegrees: number, own: Spot): Spot {
  const [sin, minusCos] = towards(headingDegrees);
  const cos = -minusCos;
  return [at[0] + own[0] * cos - own[1] * sin, at[1] + own[0] * sin + own[1] * cos];
}

/** The smallest upright rectangle around the points; null for none. */
export function boundsOf(points: readonly Spot[]): Bounds | null {
  if (points.length === 0) return null;
  let [left, top] = points[0];
  let [right, bottom] = points[0];
  for (const [x, z] of points) {
    left = Math.min(left, x);
    top = Math.min(top, z);
    right = Math.max(right, x);
    bottom = Math.max(bottom, z);
  }
  return [left, top, right, bottom];
}

export const middleOf = ([left, top, right, bottom]: Bounds): Spot => [
  (left + right) / 2,
  (top + bottom) / 2,
];

/** The point half way along a path; null for none. */
export function halfWay(path: readonly Spot[]): Spot | null {
  const lengths = path.slice(1).map((spot, index) => distance(path[index], spot));
  let left = lengths.reduce((sum, length) => sum + length, 0) / 2;
  for (let i = 0; i < lengths.length; i += 1) {
    if (left <= lengths[i] && lengths[i] > 0) return between(path[i], path[i + 1], left / lengths[i]);
    left -= lengths[i];
  }
  return path[0] ?? null;
}

/** The point of a segment that lies nearest to `point`. */
export function nearestOnSegment(point: Spot, from: Spot, to: Spot): Spot {
  const along = minus(to, from);
  const size = along[0] ** 2 + along[1] ** 2;
  if (size === 0) return from;
  const share = ((point[0] - from[0]) * along[0] + (point[1] - from[1]) * along[1]) / size;
  return between(from, to, Math.min(1, Math.max(0, share)));
}

/** Whether the point lies inside the polygon, by crossings. */
export function isInside(point: Spot, polygon: readonly Spot[]): boolean {
  let inside = false;
  for (let i = 0, j = polygon.length - 1; i < polygon.length; j = i, i += 1) {
    const [xi, zi] = polygon[i];
    const [xj, zj] = polygon[j];
    if (zi > point[1] !== zj > point[1] && point[0] < ((xj - xi) * (point[1] - zi)) / (zj - zi) + xi) {
      inside = !inside;
    }
  }
  return inside;
}
