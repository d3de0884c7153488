import { type Bounds, between, type Spot } from './spots';

/** A convex or concave polygon cut to an upright rectangle (Sutherland and Hodgman; common practice, no source). */
export function polygonWithin(polygon: readonly Spot[], [left, top, right, bottom]: Bounds): Spot[] {
  const sides: readonly ((point: Spot) => number)[] = [
    (point) => point[0] - left,
    (point) => right - point[0],
    (point) => point[1] - top,
    (point) => bottom - point[1],
  ];
  return sides.reduce<Spot[]>((cut, inside) => cutBy(cut, inside), [...polygon]);
}

function cutBy(polygon: readonly Spot[], inside: (point: Spot) => number): Spot[] {
  const kept: Spot[] = [];
  polygon.forEach((point, index) => {
    const before = polygon[(index + polygon.length - 1) % polygon.length];
    const here = inside(point);
    const there = inside(before);
    if (here >= 0 !== there >= 0) kept.push(between(before, point, there / (there - here)));
    if (here >= 0) kept.push(point);
  });
  return kept;
}

/** The part of a segment inside an upright rectangle (Liang and Barsky; common practice, no source); null for none. */
export function segmentWithin(
  from: Spot,
  to: Spot,
  [left, top, right, bottom]: Bounds,
): readonly [Spot, Spot] | null {
  const [dx, dz] = [to[0] - from[0], to[1] - from[1]];
  let enter = 0;
  let leave = 1;
  const limits: readonly (readonly [number, number])[] = [
    [-dx, from[0] - left],
    [dx, right - from[0]],
    [-dz, from[1] - top],
    [dz, bottom - from[1]],
  ];
  for (const [step, room] of limits) {
    if (step === 0 && room < 0) return null;
    if (step < 0) enter = Math.max(enter, room / step);
    if (step > 0) leave = Math.min(leave, room / step);
  }
  return enter <= leave ? [between(from, to, enter), between(from, to, leave)] : null;
}

/** Length of the part of a segment that lies inside an upright rectangle. */
export function lengthWithin(from: Spot, to: Spot, bounds: Bounds): number {
  const part = segmentWithin(from, to, bounds);
  return part ? Math.hypot(part[1][0] - part[0][0], part[1][1] - part[0][1]) : 0;
}

/** Area that two upright rectangles share. */
export function sharedArea(a: Bounds, b: Bounds): number {
  const width = Math.min(a[2], b[2]) - Math.max(a[0], b[0]);
  const height = Math.min(a[3], b[3]) - Math.max(a[1], b[1]);
  return width > 0 && height > 0 ? width * height : 0;
}
