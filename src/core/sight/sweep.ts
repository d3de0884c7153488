import type { Vec3 } from '../form/build/vector';
import { keyAt } from '../optics/pose';
import { cameraFromWorld } from '../optics/project';
import type { Camera } from '../optics/types';
import type { CameraKey, Setup } from '../plan/schema/setup';
import { hypot } from '../units/steadyMath';
import { type Grid, reachOf } from './grid';
import { type Mirror, mirrorOf, reflected } from './mirrors';
import type { SightStage } from './stage';

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
    metres += hypot(
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

/** What may happen between two asked frames: the stages at these and at all frames between, the camera at the first. */
export interface Interval {
  readonly stages: readonly SightStage[];
  readonly camera: Camera;
  readonly grid: Grid;
  readonly motion: Motion;
}

/** How far a part's middle gets from where it is at first, at any frame; 0 for what stands. */
function travelOf(stages: readonly SightStage[], part: number): number {
  const first = stages[0].parts[part];
  if (!first.worldFromPart) return 0;
  let farthest = 0;
  for (const stage of stages) {
    const { centre } = stage.parts[part];
    const [x, y, z] = [0, 1, 2].map((axis) => centre[axis] - first.centre[axis]);
    farthest = Math.max(farthest, Math.sqrt(x * x + y * y + z * z));
  }
  return farthest;
}

/** Radius of a ball that holds a part at every frame, around where its middle is at first. */
function reachOfPart(stages: readonly SightStage[], part: number): number {
  const radius = stages.reduce((most, stage) => Math.max(most, stage.parts[part].radius), 0);
  return radius + travelOf(stages, part);
}

/** Whether a ball may be in the grid's field at any moment: grown by all that the camera may do, at its first pose. */
function ballMayEnter(centre: Vec3, reach: number, { camera, grid, motion }: Interval): boolean {
  const { tanX, tanY } = reachOf(grid);
  const [x, y, z] = cameraFromWorld(camera.pose, centre);
  const away = Math.sqrt(x * x + y * y + z * z);
  const moved = reach + motion.metres;
  const radius = moved + motion.radians * (away + moved);
  return (
    z > -radius &&
    Math.abs(x) - z * tanX <= radius * Math.sqrt(1 + tanX * tanX) &&
    Math.abs(y) - z * tanY <= radius * Math.sqrt(1 + tanY * tanY)
  );
}

/** The mirrors that may be in frame at some frame of the interval. */
export function mirrorsIn(interval: Interval): readonly Mirror[] {
  const { stages } = interval;
  return stages[0].parts.flatMap((part) => {
    const mirror = mirrorOf(part);
    return mirror && ballMayEnter(part.centre, reachOfPart(stages, part.index), interval) ? [mirror] : [];
  });
}

/**
 * Whether an item may be in frame, directly or in one of the mirrors, at any frame of an interval. It may say yes
 * wrongly, never no: it asks the ball around each part, grown by all that the part does and the camera may do.
 */
export function mayEnter(item: number, interval: Interval, mirrors: readonly Mirror[]): boolean {
  const { stages } = interval;
  const { firstPart, parts } = stages[0];
  for (let k = firstPart[item]; k < firstPart[item + 1]; k += 1) {
    const reach = reachOfPart(stages, k);
    const { centre } = parts[k];
    if (ballMayEnter(centre, reach, interval)) return true;
    if (mirrors.some((mirror) => ballMayEnter(reflected(centre, mirror), reach, interval))) return true;
  }
  return false;
}
