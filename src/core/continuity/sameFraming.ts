import type { Vec3 } from '../form/build/vector';
import { whereabouts } from '../form/figure/whereabouts';
import { cameraAt, frameShapeOf, stateAt } from '../optics/camera';
import { cameraFromWorld } from '../optics/project';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';

/** Where the camera has to stand to frame somebody on another lens as it does now. */
export interface SameFraming {
  /** Entrance pupil, metres. */
  readonly position: Vec3;
  /** From the eyes along the axis before and after, metres. */
  readonly distanceMetres: readonly [before: number, after: number];
  /** Width of what is seen `behindMetres` behind the eyes, before and after, metres. */
  readonly fieldBehindMetres: readonly [before: number, after: number];
  readonly behindMetres: number;
}

/**
 * The place from which another lens frames a performer alike at an instant: eyes at the same place of the frame, head
 * as high in it, camera turned as it is. With the eyes at (x, y, z) in the camera's axes and r = tan(half height) now
 * over then, they have to lie at z' = r z, and at x', y' in the proportion of the new half angles.
 * Null for nobody there or behind the camera. Frames are taken without distortion.
 */
export function sameFraming(
  plan: Plan,
  setup: Setup,
  args: {
    readonly lensId: string;
    readonly performerId: string;
    readonly seconds: number;
    readonly behindMetres: number;
  },
): SameFraming | null {
  const { lensId, performerId, seconds, behindMetres } = args;
  const scene = played(plan, setup);
  const performer = scene.cast.find(({ id }) => id === performerId);
  const place = performer && whereabouts(performer, scene, seconds);
  if (!place) return null;
  const { pose, frame } = cameraAt(plan, setup, seconds);
  // A zoom is as far in as the setup's keys would have it.
  const fitted = { ...setup, lens: lensId };
  const other = frameShapeOf(plan, fitted, stateAt(plan, fitted, seconds).focalMm);
  const [x, y, z] = cameraFromWorld(pose, place.eyes);
  if (!(z > 0)) return null;
  const then = (frame.tanHalfHeight / other.tanHalfHeight) * z;
  const aside = ((x / z) * then * other.tanHalfWidth) / frame.tanHalfWidth;
  const above = ((y / z) * then * other.tanHalfHeight) / frame.tanHalfHeight;
  const position = [0, 1, 2].map(
    (axis) => place.eyes[axis] - pose.right[axis] * aside - pose.up[axis] * above - pose.forward[axis] * then,
  );
  return {
    position: [position[0], position[1], position[2]],
    distanceMetres: [z, then],
    fieldBehindMetres: [
      2 * frame.tanHalfWidth * (z + behindMetres),
      2 * other.tanHalfWidth * (then + behindMetres),
    ],
    behindMetres,
  };
}
