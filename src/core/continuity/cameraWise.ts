import type { Spot } from '../plan/schema/numbers';
import { cos, sin } from '../units/steadyMath';

/** Seen from a camera: to its right and towards it, metres; negative the other way. */
export interface CameraWise {
  readonly rightMetres: number;
  readonly towardsMetres: number;
}

/** The way from one place on the deck to another as a camera of a heading sees it. */
export function cameraWise(
  from: Spot | readonly [number, number],
  to: Spot | readonly [number, number],
  cameraHeadingDegrees: number,
): CameraWise {
  const radians = (cameraHeadingDegrees * Math.PI) / 180;
  const [x, z] = [to[0] - from[0], to[1] - from[1]];
  const [c, s] = [cos(radians), sin(radians)];
  return { rightMetres: x * c + z * s, towardsMetres: z * c - x * s };
}
