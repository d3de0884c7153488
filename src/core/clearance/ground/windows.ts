import { cameraAt, spanOf } from '../../optics/camera';
import type { Camera } from '../../optics/types';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { instantsOf } from '../../sight/frames';
import { type Motion, motionOver } from '../../sight/sweep';
import type { Reach } from './prism';

/** Frames that one of them stands for, since the camera hardly moves in them. */
export interface Window {
  readonly first: number;
  readonly last: number;
  /** The camera at the frame in the middle, and how far it gets from there in the others. */
  readonly camera: Camera;
  readonly motion: Motion;
}

/** A setup's frames: when they are, where the camera is at each, and in windows. */
export interface Windows {
  readonly instants: Float64Array;
  readonly cameras: readonly Camera[];
  readonly windows: readonly Window[];
}

/** How far a camera may get in a window: 20 mm, and 30 mm at ten metres by its turn. */
const MOST_METRES = 0.02;
const MOST_CHORD = 0.003;

const isSameFrame = ({ frame: a }: Camera, { frame: b }: Camera): boolean =>
  a.tanHalfWidth === b.tanHalfWidth && a.tanHalfHeight === b.tanHalfHeight;

/** The frames of a setup over its span, in windows. */
export function windowsOf(plan: Plan, setup: Setup): Windows {
  const instants = instantsOf(...spanOf(plan, setup));
  const cameras = Array.from(instants, (seconds) => cameraAt(plan, setup, seconds));
  const isNear = (a: Camera, b: Camera): boolean => {
    if (!isSameFrame(a, b)) return false;
    const { metres, chord } = motionOver([a, b]);
    return metres <= MOST_METRES && chord <= MOST_CHORD;
  };
  const windows: Window[] = [];
  for (let first = 0; first < cameras.length; ) {
    let middle = first;
    while (middle + 1 < cameras.length && isNear(cameras[middle + 1], cameras[first])) middle += 1;
    // All frames on the way to the middle have to be near it, too: a move may go there and back.
    while (cameras.slice(first, middle).some((camera) => !isNear(camera, cameras[middle]))) middle -= 1;
    let last = middle;
    while (last + 1 < cameras.length && isNear(cameras[middle], cameras[last + 1])) last += 1;
    const motion = motionOver([cameras[middle], ...cameras.slice(first, last + 1)]);
    windows.push({ first, last, camera: cameras[middle], motion });
    first = last + 1;
  }
  return { instants, cameras, windows };
}

/** A reach that takes in what a camera takes in at all frames of a window. */
export function overWindow({ motion }: Window, { tanX, tanY, metres, back }: Reach): Reach {
  // What is in frame lies at most so much farther from the eye than its depth; a turn moves it by the chord of that.
  const slant = Math.sqrt(1 + tanX * tanX + tanY * tanY);
  const lean = Math.sqrt(1 + Math.max(tanX * tanX, tanY * tanY));
  const turn = motion.chord * slant * lean * 1.1;
  return {
    tanX: tanX + turn,
    tanY: tanY + turn,
    metres: metres + motion.metres * lean * 1.1,
    back: back + motion.metres * 1.1,
  };
}
