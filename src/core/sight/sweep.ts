import { keyAt } from '../optics/pose';
import { cameraFromWorld } from '../optics/project';
import type { Camera } from '../optics/types';
import type { CameraKey, Setup } from '../plan/schema/setup';
import { pyramidOf } from './margin';
import type { MirrorView } from './mirrors';
import type { SightStage, StagePart } from './stage';

/** How much a camera moves and turns between two instants: path length in metres, turn in radians, at most. */
export interface Motion {
  readonly metres: number;
  readonly radians: number;
}

const RADIANS = Math.PI / 180;

/** An upper bound of a move's motion between two instants: between keys every component runs one way only. */
export function motionBetween(move: Setup['move'], from: number, to: number): Motion {
  const stops: CameraKey[] = [
    keyAt(move, from),
    ...move.keys.filter((key) => key.atSeconds > from && key.atSeconds < to),
    keyAt(move, to),
  ];
  let metres = 0;
  let degrees = 0;
  for (let k = 1; k < stops.length; k += 1) {
    const [a, b] = [stops[k - 1], stops[k]];
    metres += Math.hypot(
      b.position[0] - a.position[0],
      b.position[1] - a.position[1],
      b.position[2] - a.position[2],
    );
    degrees +=
      Math.abs(b.headingDegrees - a.headingDegrees) +
      Math.abs(b.tiltDegrees - a.tiltDegrees) +
      Math.abs(b.rollDegrees - a.rollDegrees);
  }
  return { metres, radians: degrees * RADIANS };
}

/** How far a part's middle travels between two instants: the straight way, for parts that move at all. */
function travelOf(before: StagePart, after: StagePart): number {
  return Math.hypot(
    after.centre[0] - before.centre[0],
    after.centre[1] - before.centre[1],
    after.centre[2] - before.centre[2],
  );
}

/** A limb may swing on its way: its real path is taken to be at most this much longer than the straight one. */
const SWING_METRES = 0.25;

export function reflected(
  centre: readonly [number, number, number],
  mirror: MirrorView,
): readonly [number, number, number] {
  const { normal, point } = mirror;
  const height =
    normal[0] * (centre[0] - point[0]) +
    normal[1] * (centre[1] - point[1]) +
    normal[2] * (centre[2] - point[2]);
  return [
    centre[0] - 2 * height * normal[0],
    centre[1] - 2 * height * normal[1],
    centre[2] - 2 * height * normal[2],
  ];
}

/** Whether a ball may touch the camera's pyramid. */
function touchesPyramid(centre: readonly [number, number, number], radius: number, camera: Camera): boolean {
  const { tanX, tanY } = pyramidOf(camera.frame);
  const [x, y, z] = cameraFromWorld(camera.pose, centre);
  return (
    z > -radius &&
    Math.abs(x) - z * tanX <= radius * Math.sqrt(1 + tanX * tanX) &&
    Math.abs(y) - z * tanY <= radius * Math.sqrt(1 + tanY * tanY)
  );
}

/**
 * Whether an item may be in frame, directly or in one of the mirrors, at any moment between two instants: the
 * interval test. It may say yes wrongly, never no: the ball around each part, grown by all that the camera and
 * the part may do in between, against the pyramid at the first instant.
 */
export function mayEnter(
  before: SightStage,
  after: SightStage,
  item: number,
  camera: Camera,
  motion: Motion,
  mirrors: readonly MirrorView[],
): boolean {
  for (let k = before.firstPart[item]; k < before.firstPart[item + 1]; k += 1) {
    const part = before.parts[k];
    const travel = travelOf(part, after.parts[k]);
    const swing = part.worldFromPart === null || travel === 0 ? 0 : SWING_METRES;
    const p = camera.pose.position;
    const away = Math.hypot(part.centre[0] - p[0], part.centre[1] - p[1], part.centre[2] - p[2]);
    const reach = part.radius + motion.metres + travel + swing;
    if (touchesPyramid(part.centre, reach + motion.radians * (away + reach), camera)) return true;
    for (const mirror of mirrors) {
      const image = reflected(part.centre, mirror);
      const far = Math.hypot(image[0] - p[0], image[1] - p[1], image[2] - p[2]);
      if (touchesPyramid(image, reach + motion.radians * (far + reach), camera)) return true;
    }
  }
  return false;
}
