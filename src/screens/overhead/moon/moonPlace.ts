import type { Moonlight } from '../../../core/light/ambient';
import { asin } from '../../../core/units/steadyMath';
import type { Bounds, Spot } from '../geometry/spots';

/** Where the moon is drawn beside the roof, and which way its light goes from there; pixels. */
export interface MoonPlace {
  readonly at: Spot;
  /** Unit vector towards the roof. */
  readonly way: Spot;
  readonly altitudeDegrees: number;
}

/** How far outside the roof it stands. */
const OFF = 34;

/** Beside the roof, on the bearing from which the moon shines; null straight overhead. */
export function moonPlace({ way }: Moonlight, [left, top, right, bottom]: Bounds): MoonPlace | null {
  const [x, , z] = way;
  const level = Math.sqrt(x * x + z * z);
  if (level < 0.02) return null;
  const [ux, uy] = [x / level, z / level];
  const [halfWide, halfHigh] = [(right - left) / 2 + OFF, (bottom - top) / 2 + OFF];
  const reach = Math.min(
    ux === 0 ? Infinity : halfWide / Math.abs(ux),
    uy === 0 ? Infinity : halfHigh / Math.abs(uy),
  );
  return {
    at: [(left + right) / 2 + ux * reach, (top + bottom) / 2 + uy * reach],
    way: [-ux, -uy],
    altitudeDegrees: (asin(way[1]) * 180) / Math.PI,
  };
}
