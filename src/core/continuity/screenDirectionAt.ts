import { dot, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import type { CameraPose } from '../optics/types';
import { atan2, hypot } from '../units/steadyMath';

/** Which way somebody goes as the frame shows it; *towards* and *away* have no direction across it. */
export type ScreenDirection = 'left to right' | 'right to left' | 'towards' | 'away';

/** Within this of straight at the lens or from it a walk has no direction across the frame, degrees. Source: common practice, no source */
const NEUTRAL_DEGREES = 20;

/** How somebody moves through a frame. */
export interface ScreenMotion {
  readonly direction: ScreenDirection;
  /** Metres a second across the sight of them, positive to frame right. */
  readonly acrossMetresPerSecond: number;
  /** Between their way and the sight of them, 0 to 90 degrees. */
  readonly offSightDegrees: number;
}

/**
 * Which way somebody goes across a frame: their velocity over the roof, metres a second, without the part that lies
 * along the sight of them, against the camera's right. What the camera itself does is left out: somebody whom a camera
 * keeps in the middle is seen to go by what is behind them. Null for somebody who stands.
 */
export function screenMotion(pose: CameraPose, at: Vec3, velocity: Vec3): ScreenMotion | null {
  const speed = hypot(velocity[0], velocity[1], velocity[2]);
  if (speed < 1e-6) return null;
  const sight = unit(subtract(at, pose.position));
  const along = dot(velocity, sight);
  const square = subtract(velocity, scale(sight, along));
  const across = dot(square, pose.right);
  const off = (atan2(hypot(square[0], square[1], square[2]), Math.abs(along)) * 180) / Math.PI;
  const neutral = along < 0 ? 'towards' : 'away';
  const crossing = across > 0 ? 'left to right' : 'right to left';
  return {
    direction: off < NEUTRAL_DEGREES ? neutral : crossing,
    acrossMetresPerSecond: across,
    offSightDegrees: off,
  };
}
