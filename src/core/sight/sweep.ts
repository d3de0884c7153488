import type { Vec3 } from '../form/build/vector';
import { cameraFromWorld } from '../optics/project';
import type { Camera } from '../optics/types';
import { hypot } from '../units/steadyMath';
import { type FacedMirror, type Mirror, mirrorOf, reflected } from './mirrors';
import type { SightStage, StagePart } from './stage';

/** How far a camera gets from where it is at first, at any of some frames: metres, and the chord of its turn. */
export interface Motion {
  readonly metres: number;
  /** A turn by an angle moves what is a distance away by at most 2 sin(angle/2) times that distance. */
  readonly chord: number;
}

/** The chord of a turn, 2 sin(angle/2), by how the axes differ: their squared shifts add up to 8 sin²(angle/2). */
const chordOf = (squares: number): number => Math.sqrt(squares / 2);

/** The motion of a camera from the first of some frames to the others. */
export function motionOver(cameras: readonly Camera[]): Motion {
  const first = cameras[0].pose;
  let metres = 0;
  let chord = 0;
  for (const { pose } of cameras) {
    const [x, y, z] = [0, 1, 2].map((axis) => pose.position[axis] - first.position[axis]);
    metres = Math.max(metres, hypot(x, y, z));
    let squares = 0;
    for (let axis = 0; axis < 3; axis += 1) {
      const [r, u, f] = [
        pose.right[axis] - first.right[axis],
        pose.up[axis] - first.up[axis],
        pose.forward[axis] - first.forward[axis],
      ];
      squares += r * r + u * u + f * f;
    }
    chord = Math.max(chord, chordOf(squares));
  }
  return { metres, chord };
}

/** What may happen between two asked frames: the stages at these and at all frames between, the camera at the first. */
export interface Interval {
  readonly stages: readonly SightStage[];
  readonly camera: Camera;
  /** How far to the side and up the field reaches at any of the frames, as tangents. */
  readonly field: { readonly tanX: number; readonly tanY: number };
  readonly motion: Motion;
}

/**
 * A part at another frame, by its place among the parts of its item: what changes hands may give an item more parts at one
 * frame than at another, which moves the numbers of all parts after it. Undefined where it is not there.
 */
function partAt({ parts, firstPart }: SightStage, item: number, place: number): StagePart | undefined {
  const k = firstPart[item] + place;
  return k < firstPart[item + 1] ? parts[k] : undefined;
}

/** How far apart two places are, metres. */
function metresBetween(a: Vec3, b: Vec3): number {
  const x = a[0] - b[0];
  const y = a[1] - b[1];
  const z = a[2] - b[2];
  return Math.sqrt(x * x + y * y + z * z);
}

/** Radius of a ball that holds a part at every frame, around where its middle is at first. */
function reachOfPart(stages: readonly SightStage[], first: StagePart): number {
  const place = first.index - stages[0].firstPart[first.item];
  let radius = 0;
  let farthest = 0;
  for (const stage of stages) {
    const part = partAt(stage, first.item, place);
    if (!part) continue;
    radius = Math.max(radius, part.radius);
    if (first.worldFromPart && part !== first)
      farthest = Math.max(farthest, metresBetween(part.centre, first.centre));
  }
  return radius + farthest;
}

/** The numbers of a rigid motion that turn; the others shift. */
const TURNING = [0, 1, 2, 4, 5, 6, 8, 9, 10];

/** How far any point of a part gets from where it is at first, metres; Infinity where it takes another shape. */
function shiftOfPart(stages: readonly SightStage[], first: StagePart): number {
  const place = first.index - stages[0].firstPart[first.item];
  const m = first.worldFromPart;
  let farthest = 0;
  for (const stage of stages) {
    const part = partAt(stage, first.item, place);
    if (!part) continue;
    const { centre, radius, worldFromPart, shape } = part;
    if (shape === first.shape && worldFromPart === m) continue;
    if (!m || !worldFromPart || shape !== first.shape) return Infinity;
    let squares = 0;
    for (const k of TURNING) squares += (worldFromPart[k] - m[k]) * (worldFromPart[k] - m[k]);
    farthest = Math.max(farthest, metresBetween(centre, first.centre) + radius * chordOf(squares));
  }
  return farthest;
}

/**
 * How much nearer to the frame line an item may come over an interval than it is at the interval's first frame, metres
 * square to the axis: by what its parts do, what the camera does, and what a zoom takes in. Infinity where it changes
 * its parts. A point that moves by a length gets no farther in from a side of the pyramid than that times √(1 + tan²).
 */
export function mostApproach(item: number, { stages, camera, field, motion }: Interval): number {
  const { parts, firstPart } = stages[0];
  const { tanHalfWidth, tanHalfHeight } = camera.frame;
  const [widerX, widerY] = [Math.max(0, field.tanX - tanHalfWidth), Math.max(0, field.tanY - tanHalfHeight)];
  const slope = Math.sqrt(2 + field.tanX * field.tanX + field.tanY * field.tanY);
  const count = firstPart[item + 1] - firstPart[item];
  if (stages.some((stage) => stage.firstPart[item + 1] - stage.firstPart[item] !== count)) return Infinity;
  let most = 0;
  for (let k = firstPart[item]; k < firstPart[item + 1]; k += 1) {
    const { centre, radius } = parts[k];
    const shift = shiftOfPart(stages, parts[k]);
    if (shift === Infinity) return Infinity;
    const [x, y, z] = cameraFromWorld(camera.pose, centre);
    const away = Math.sqrt(x * x + y * y + z * z) + radius + shift + motion.metres;
    const moved = shift + motion.metres + motion.chord * away;
    most = Math.max(most, moved * slope + hypot(widerX, widerY) * away);
  }
  return most;
}

/** Whether a ball may be in the grid's field at any moment: grown by all that the camera may do, at its first pose. */
function ballMayEnter(centre: Vec3, reach: number, { camera, field, motion }: Interval): boolean {
  const { tanX, tanY } = field;
  const [x, y, z] = cameraFromWorld(camera.pose, centre);
  const away = Math.sqrt(x * x + y * y + z * z);
  const moved = reach + motion.metres;
  const radius = moved + motion.chord * (away + moved);
  return (
    z > -radius &&
    Math.abs(x) - z * tanX <= radius * Math.sqrt(1 + tanX * tanX) &&
    Math.abs(y) - z * tanY <= radius * Math.sqrt(1 + tanY * tanY)
  );
}

/** The mirrors that may be in frame at some frame of the interval. */
export function mirrorsIn(interval: Interval): readonly FacedMirror[] {
  const { stages } = interval;
  return stages[0].parts.flatMap((part) => {
    const mirror = mirrorOf(part);
    return mirror && ballMayEnter(part.centre, reachOfPart(stages, part), interval)
      ? [{ normal: mirror.normal, point: mirror.point, part }]
      : [];
  });
}

/**
 * Whether an item may be in frame, directly or in one of the mirrors, at any frame of an interval. It may say yes
 * wrongly, never no: it asks the ball around each part, grown by all that the part does and the camera may do.
 */
export function mayEnter(item: number, interval: Interval, mirrors: readonly Mirror[]): boolean {
  const { stages } = interval;
  const countAt = ({ firstPart }: SightStage): number => firstPart[item + 1] - firstPart[item];
  const most = stages.reduce((a, b) => (countAt(b) > countAt(a) ? b : a));
  const { firstPart, parts } = most;
  // The stage with the most parts comes first, so that each part is asked, whenever it is there.
  const ordered = most === stages[0] ? stages : [most, ...stages];
  for (let k = firstPart[item]; k < firstPart[item + 1]; k += 1) {
    const reach = reachOfPart(ordered, parts[k]);
    const { centre } = parts[k];
    if (ballMayEnter(centre, reach, interval)) return true;
    if (mirrors.some((mirror) => ballMayEnter(reflected(centre, mirror), reach, interval))) return true;
  }
  return false;
}
