import { add, directionOf, scale, type Vec3 } from '../build/vector';
import type { Stand } from './references';

/** Where a stand holds what it carries. */
export interface StandTop {
  /** World metres: the top of the spigot, or the far end of the arm. */
  readonly at: Vec3;
  /** Compass heading of the arm, or of the stand where it has none. */
  readonly headingDegrees: number;
  /** Unit vector in which the holding end points: up from a spigot, along an arm. */
  readonly outward: Vec3;
}

/** The top of the spigot: `heightMetres` above the foot. */
export const spigotTop = (stand: Stand): Vec3 => add(stand.at, [0, stand.heightMetres, 0]);

/** Where carried things sit: the end of the arm, or the top of the spigot. */
export function standTop(stand: Stand): StandTop {
  const top = spigotTop(stand);
  if (!stand.arm) return { at: top, headingDegrees: stand.headingDegrees, outward: [0, 1, 0] };
  const outward = directionOf(stand.arm.headingDegrees, stand.arm.tiltDegrees);
  return {
    at: add(top, scale(outward, stand.arm.lengthMetres)),
    headingDegrees: stand.arm.headingDegrees,
    outward,
  };
}
