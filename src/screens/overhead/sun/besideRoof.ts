import type { Bounds, Spot } from '../geometry/spots';

/** Where what shines is drawn beside the roof, which way its light goes from there, and where that leaves the roof; pixels. */
interface BesideRoof {
  readonly at: Spot;
  readonly way: Spot;
  readonly opposite: Spot;
}

/** How far outside the roof it stands, and how far beyond its light is drawn. */
const OFF = 34;
const BEYOND = 8;

/** The edge of a rectangle from its middle along a way. */
function reach([ux, uy]: Spot, [left, top, right, bottom]: Bounds, off: number): number {
  return Math.min(
    ux === 0 ? Infinity : ((right - left) / 2 + off) / Math.abs(ux),
    uy === 0 ? Infinity : ((bottom - top) / 2 + off) / Math.abs(uy),
  );
}

/** Beside the roof, on the bearing from which light comes by a vector towards it; null straight overhead. */
export function besideRoof([x, , z]: readonly [number, number, number], roof: Bounds): BesideRoof | null {
  const level = Math.sqrt(x * x + z * z);
  if (level < 0.02) return null;
  const [left, top, right, bottom] = roof;
  const middle: Spot = [(left + right) / 2, (top + bottom) / 2];
  const towards: Spot = [x / level, z / level];
  const [near, far] = [reach(towards, roof, OFF), reach(towards, roof, BEYOND)];
  return {
    at: [middle[0] + towards[0] * near, middle[1] + towards[1] * near],
    way: [-towards[0], -towards[1]],
    opposite: [middle[0] - towards[0] * far, middle[1] - towards[1] * far],
  };
}
