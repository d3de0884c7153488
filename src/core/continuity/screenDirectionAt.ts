import { dot, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import { cameraFromWorld } from '../optics/project';
import type { CameraPose } from '../optics/types';
import { atan2, hypot } from '../units/steadyMath';

/** Which way somebody goes as the frame shows it; *towards* and *away* have no direction across it. */
export type ScreenDirection = 'left to right' | 'right to left' | 'towards' | 'away';

/** Within this of straight at the lens or from it a walk has no direction across the frame, degrees. Source: common practice, no source */
const NEUTRAL_DEGREES = 20;

/** How somebody moves through a frame. */
export interface ScreenMotion {
  readonly direction: ScreenDirection;
  /** How fast they go across the picture, taken to where they are: metres a second, positive to frame right. */
  readonly acrossMetresPerSecond: number;
  /** Between their way and the sight of them, 0 to 90 degrees. */
  readonly offSightDegrees: number;
}

/**
 * Which way somebody goes across a frame, from their velocity over the roof, metres a second: as their image goes for a
 * camera that stands as it does at that instant. With x to the right of the axis and z along it the image lies at x/z,
 * and goes by (v_x − v_z x/z)/z. What the camera itself does is left out: somebody whom a camera
 * keeps in the middle is seen to go by what is behind them. Null for somebody who stands.
 */
export function screenMotion(pose: CameraPose, at: Vec3, velocity: Vec3): ScreenMotion | null {
  const speed = hypot(velocity[0], velocity[1], velocity[2]);
  if (speed < 1e-6) return null;
  const sight = unit(subtract(at, pose.position));
  const along = dot(velocity, sight);
  const square = subtract(velocity, scale(sight, along));
  const [x, , z] = cameraFromWorld(pose, at);
  const across = dot(velocity, pose.right) - (z > 0 ? (dot(velocity, pose.forward) * x) / z : 0);
  const off = (atan2(hypot(square[0], square[1], square[2]), Math.abs(along)) * 180) / Math.PI;
  const neutral = along < 0 ? 'towards' : 'away';
  const crossing = across > 0 ? 'left to right' : 'right to left';
  return {
    direction: off < NEUTRAL_DEGREES ? neutral : crossing,
    acrossMetresPerSecond: across,
    offSightDegrees: off,
  };
}
