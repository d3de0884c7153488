import type { Vec3 } from '../../../src/core/form/build/vector';
import type { Camera, CameraPose, FrameShape } from '../../../src/core/optics/types';
import type { Distortion } from '../../../src/core/plan/schema/kit';

/** A camera matrix with the axis in the middle of the picture, pixels. */
export interface Matrix {
  readonly fx: number;
  readonly fy: number;
  readonly cx: number;
  readonly cy: number;
}

/** OpenCV's coordinates run x right, y down, z forward; ours x right, y up, z towards the reader. */
export const fromOpenCv = ([x, y, z]: Vec3): Vec3 => [x, -y, -z];

export const STRAIGHT: Distortion = { k1: 0, k2: 0, k3: 0, p1: 0, p2: 0 };

/** The frame whose pixels a camera matrix speaks of. */
function frameOf({ fx, fy, cx, cy }: Matrix, distortion: Distortion | null): FrameShape {
  return { tanHalfWidth: cx / fx, tanHalfHeight: cy / fy, aspect: cx / fx / (cy / fy), distortion };
}

/** The pose of a camera to which [R | t] brings the world: rows of R are its right, down and forward. */
export function poseFrom(rows: ArrayLike<number>, t: Vec3): CameraPose {
  const row = (k: number): Vec3 => [rows[3 * k], rows[3 * k + 1], rows[3 * k + 2]];
  const [right, down, forward] = [row(0), row(1), row(2)];
  const centre = [0, 1, 2].map((axis) => -(right[axis] * t[0] + down[axis] * t[1] + forward[axis] * t[2]));
  return {
    position: fromOpenCv([centre[0], centre[1], centre[2]]),
    right: fromOpenCv(right),
    up: fromOpenCv([-down[0], -down[1], -down[2]]),
    forward: fromOpenCv(forward),
  };
}

/** From shares of the frame to pixels of the matrix. */
export const inPixels = (
  { cx, cy }: Matrix,
  place: { readonly x: number; readonly y: number },
): readonly [number, number] => [place.x * 2 * cx, place.y * 2 * cy];

export const cameraOf = (matrix: Matrix, pose: CameraPose, distortion: Distortion | null): Camera => ({
  pose,
  frame: frameOf(matrix, distortion),
});
