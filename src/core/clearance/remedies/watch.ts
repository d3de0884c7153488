import { dot, scale, subtract, type Vec3 } from '../../form/build/vector';
import { formsAt } from '../../form/formsAt';
import type { ItemForm } from '../../form/types';
import { cameraAt, spanOf } from '../../optics/camera';
import { cameraFromWorld } from '../../optics/project';
import type { Camera } from '../../optics/types';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { entersFrame } from '../../sight/entering';
import { instantsOf } from '../../sight/frames';
import { aroundFrame, isNearer } from '../../sight/margin';
import { type Mirror, mirrorOf, reflected } from '../../sight/mirrors';
import { type SightStage, stageOf } from '../../sight/stage';

/** A camera at one instant, and where the mirrors of the plan show it: its images behind them. */
export interface Watch {
  readonly seconds: number;
  readonly camera: Camera;
  /** The upright rectangle around all that the lens takes in, without its bending. */
  readonly around: Camera;
  readonly images: readonly Camera[];
}

/** How far outside of a frame something has to stay; 0 for both: anywhere outside. */
export interface Berth {
  readonly metres: number;
  readonly frameWidths: number;
}

const samePose = ({ pose: a, frame: p }: Camera, { pose: b, frame: q }: Camera): boolean =>
  p.tanHalfWidth === q.tanHalfWidth &&
  p.tanHalfHeight === q.tanHalfHeight &&
  [0, 1, 2].every(
    (axis) =>
      a.position[axis] === b.position[axis] &&
      a.forward[axis] === b.forward[axis] &&
      a.up[axis] === b.up[axis],
  );

/** A way as a mirror shows it. */
const turnedBack = (way: Vec3, { normal }: Mirror): Vec3 =>
  subtract(way, scale(normal, 2 * dot(normal, way)));

function imageOf({ pose, frame }: Camera, mirror: Mirror): Camera {
  return {
    frame,
    pose: {
      position: reflected(pose.position, mirror),
      right: turnedBack(pose.right, mirror),
      up: turnedBack(pose.up, mirror),
      forward: turnedBack(pose.forward, mirror),
    },
  };
}

/** Mirrors by set pieces and ground: cameras are tried by the hundred over one roof. */
const MIRRORS = new WeakMap<
  Plan['pieces'],
  { readonly ground: Plan['ground']; readonly mirrors: readonly Mirror[] }
>();

/** The mirrors of a roof, one for each plane: all decks of one height mirror alike. */
function mirrorsOf(plan: Plan): readonly Mirror[] {
  const known = MIRRORS.get(plan.pieces);
  if (known?.ground === plan.ground) return known.mirrors;
  const mirrors = mirrorsOn(plan);
  MIRRORS.set(plan.pieces, { ground: plan.ground, mirrors });
  return mirrors;
}

function mirrorsOn(plan: Plan): readonly Mirror[] {
  const found = new Map<string, Mirror>();
  for (const part of stageOf(formsAt({ ...plan, cast: [], gear: [] }, 0)).parts) {
    const mirror = mirrorOf(part);
    if (!mirror) continue;
    const { normal, point } = mirror;
    found.set([...normal, dot(normal, point)].map((value) => value.toFixed(6)).join(' '), mirror);
  }
  return [...found.values()];
}

/** A setup's camera at every frame of its span, or at some instants of it, each place once. */
export function watchesOf(
  plan: Plan,
  setup: Setup,
  instants: Iterable<number> = instantsOf(...spanOf(plan, setup)),
): readonly Watch[] {
  const mirrors = mirrorsOf(plan);
  const watches: Watch[] = [];
  for (const seconds of instants) {
    const camera = cameraAt(plan, setup, seconds);
    const last = watches[watches.length - 1];
    if (last && samePose(last.camera, camera)) continue;
    const { tanX, tanY } = aroundFrame(camera.frame);
    const frame = { ...camera.frame, tanHalfWidth: tanX, tanHalfHeight: tanY, distortion: null };
    const around: Camera = { pose: camera.pose, frame };
    watches.push({ seconds, camera, around, images: mirrors.map((mirror) => imageOf(around, mirror)) });
  }
  return watches;
}

/** Whether the balls around all parts are so far outside that nothing has to be measured. */
function isFarOutside({ parts }: SightStage, { pose, frame }: Camera, berth: Berth): boolean {
  const { tanHalfWidth: tanX, tanHalfHeight: tanY } = frame;
  const [slopeX, slopeY] = [Math.sqrt(1 + tanX * tanX), Math.sqrt(1 + tanY * tanY)];
  for (const { centre, radius } of parts) {
    const [x, y, z] = cameraFromWorld(pose, centre);
    if (z + radius < 0) continue;
    const out = Math.max(Math.abs(x) - z * tanX - radius * slopeX, Math.abs(y) - z * tanY - radius * slopeY);
    if (out <= Math.max(berth.metres, berth.frameWidths * 2 * tanX * (z + radius))) return false;
  }
  return true;
}

/** Whether a thing stays so far outside a camera's frame, and out of what its mirrors show of it. */
export function staysOut(stage: SightStage, { camera, around, images }: Watch, berth: Berth): boolean {
  if (!isFarOutside(stage, around, berth)) {
    if (entersFrame(stage, 0, around)) return false;
    if ((berth.metres > 0 || berth.frameWidths > 0) && isNearer(stage, 0, camera, berth)) return false;
  }
  return images.every((image) => !entersFrame(stage, 0, image));
}

const carried = (camera: Camera, [x, z]: Spot): Camera => {
  const [px, py, pz] = camera.pose.position;
  return { frame: camera.frame, pose: { ...camera.pose, position: [px - x, py, pz - z] } };
};

/** A camera as things see it that were moved over the deck by [x, z], metres: moved the other way itself. */
export const watchFrom = ({ seconds, camera, around, images }: Watch, by: Spot): Watch => ({
  seconds,
  camera: carried(camera, by),
  around: carried(around, by),
  images: images.map((image) => carried(image, by)),
});

export const NO_BERTH: Berth = { metres: 0, frameWidths: 0 };

/** A thing by itself, as sight takes it. */
export const stageOfOne = (form: ItemForm): SightStage => stageOf([form]);
