import { dot, subtract, type Vec3 } from '../form/build/vector';
import { hypot } from '../units/steadyMath';
import { distort, goodRadius } from './distortion';
import type { Camera, CameraPose } from './types';

/** A point in camera coordinates: x right, y up, z forward, metres. */
export function cameraFromWorld(pose: CameraPose, point: Vec3): Vec3 {
  const from = subtract(point, pose.position);
  return [dot(from, pose.right), dot(from, pose.up), dot(from, pose.forward)];
}

/** Where a point falls in the picture. */
export interface Projected {
  /** 0..1 of the delivered frame from its left edge; outside that range beyond the frame line. */
  readonly x: number;
  /** 0..1 from its top edge. */
  readonly y: number;
  /** Distance along the axis from the entrance pupil, metres. */
  readonly depth: number;
}

/** Whether a point falls within the frame line, its edge included. */
export const isInFrame = ({ x, y }: Pick<Projected, 'x' | 'y'>): boolean =>
  x >= 0 && x <= 1 && y >= 0 && y <= 1;

/** Projects a world point through the setup's lens. Null behind the camera, or where the distortion model folds back. */
export function projectPoint(camera: Camera, point: Vec3): Projected | null {
  const [x, y, depth] = cameraFromWorld(camera.pose, point);
  if (!(depth > 0)) return null;
  const { tanHalfWidth, tanHalfHeight, distortion } = camera.frame;
  const tangents: readonly [number, number] = [x / depth, -y / depth];
  if (distortion && hypot(tangents[0], tangents[1]) > goodRadius(distortion)) return null;
  const [drawnX, drawnY] = distortion ? distort(distortion, tangents[0], tangents[1]) : tangents;
  return { x: 0.5 + drawnX / (2 * tanHalfWidth), y: 0.5 + drawnY / (2 * tanHalfHeight), depth };
}
