import type { Vec3 } from '../../form/build/vector';
import { cameraFromWorld } from '../../optics/project';
import type { Camera } from '../../optics/types';
import { cornersOf } from '../../sight/corners';
import type { SightStage } from '../../sight/stage';

/** Nearer to the eye's plane than this nothing has a useful picture, metres. */
const TOO_NEAR_METRES = 0.2;

/** What something takes up in a picture, as tangents: left, bottom, right, top. */
export type Taken = readonly [left: number, bottom: number, right: number, top: number];

/** What some places take up in a camera's picture; null where one of them is beside the eye or behind it. */
export function takenBy(places: readonly Vec3[], camera: Camera): Taken | null {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const place of places) {
    const [x, y, z] = cameraFromWorld(camera.pose, place);
    if (z < TOO_NEAR_METRES) return null;
    left = Math.min(left, x / z);
    right = Math.max(right, x / z);
    bottom = Math.min(bottom, y / z);
    top = Math.max(top, y / z);
  }
  return [left, bottom, right, top];
}

/** The same for all parts of a thing, as far as it is inside the frame; null where none of it is. */
export function takenInFrame(stage: SightStage, camera: Camera): Taken | null {
  const taken = takenBy(stage.parts.flatMap(cornersOf), camera);
  if (!taken) return null;
  const { tanHalfWidth, tanHalfHeight } = camera.frame;
  const [left, bottom, right, top] = [
    Math.max(taken[0], -tanHalfWidth),
    Math.max(taken[1], -tanHalfHeight),
    Math.min(taken[2], tanHalfWidth),
    Math.min(taken[3], tanHalfHeight),
  ];
  return left < right && bottom < top ? [left, bottom, right, top] : null;
}

/** How much of the size of what is to be hidden may be missing by these boxes: they are larger than what they hold. */
const LOOSE_SHARE = 0.15;

/** Whether something of a size may hide something of another, once it is before the middle of that. */
export function mayHide(before: Taken, behind: Taken): boolean {
  const [wide, high] = [behind[2] - behind[0], behind[3] - behind[1]];
  return (
    before[2] - before[0] >= wide * (1 - LOOSE_SHARE) &&
    before[3] >= behind[3] - high * LOOSE_SHARE &&
    before[1] <= behind[1] + high * LOOSE_SHARE
  );
}
