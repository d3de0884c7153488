import type { Vec3 } from '../form/build/vector';
import { asin, atan, atan2, cos, hypot, sin } from '../units/steadyMath';
import { undistort } from './distortion';
import type { FrameShape } from './types';

const DEGREES = 180 / Math.PI;

/**
 * Pan and tilt, degrees, that bring a point of the world to a place [x, y] of the delivered frame, 0..1 from its left
 * and top edges, from a camera at `position` with a given roll. With t = (tx, ty, 1) the direction of that place in the
 * camera's own axes and v the unit direction to the point: sin(tilt + atan ty) = v_y |t| / √(1 + ty²), then the pan
 * from what is left. A point so steep that no tilt brings it there is met as nearly as can be.
 */
export function panTiltToHold(
  position: Vec3,
  point: Vec3,
  at: readonly [number, number],
  rollDegrees: number,
  frame: FrameShape,
): { readonly headingDegrees: number; readonly tiltDegrees: number } {
  const [drawnX, drawnDown] = [(2 * at[0] - 1) * frame.tanHalfWidth, (2 * at[1] - 1) * frame.tanHalfHeight];
  const straight = frame.distortion
    ? (undistort(frame.distortion, drawnX, drawnDown) ?? [drawnX, drawnDown])
    : null;
  const [sx, sy] = straight ? [straight[0], -straight[1]] : [drawnX, -drawnDown];
  // A rolled camera's place is that of a level one, turned about the axis.
  const [c, s] = [cos(rollDegrees / DEGREES), sin(rollDegrees / DEGREES)];
  const [tx, ty] = [sx * c + sy * s, sy * c - sx * s];
  const [dx, dy, dz] = [point[0] - position[0], point[1] - position[1], point[2] - position[2]];
  const away = hypot(hypot(dx, dz), dy);
  if (away < 1e-9) return { headingDegrees: 0, tiltDegrees: 0 };
  const steep = ((dy / away) * hypot(hypot(tx, ty), 1)) / hypot(1, ty);
  const tilt = asin(Math.max(-1, Math.min(1, steep))) - atan(ty);
  const heading = atan2(dx, -dz) - atan2(tx, cos(tilt) - ty * sin(tilt));
  return { headingDegrees: heading * DEGREES, tiltDegrees: tilt * DEGREES };
}
