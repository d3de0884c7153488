import type { Vec3 } from '../form/build/vector';
import type { Distortion } from '../plan/schema/kit';

/** Where a setup's camera is at one instant. `position` is the entrance pupil; the three axes are unit vectors. */
export interface CameraPose {
  readonly position: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  readonly forward: Vec3;
}

/** The delivered frame as the lens sees it: tangents of half the angles, before distortion. */
export interface FrameShape {
  readonly tanHalfWidth: number;
  readonly tanHalfHeight: number;
  /** Delivered width over height. */
  readonly aspect: number;
  readonly distortion: Distortion | null;
}

/** All that sight needs of a camera at one instant. */
export interface Camera {
  readonly pose: CameraPose;
  readonly frame: FrameShape;
}
