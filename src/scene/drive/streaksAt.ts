import { beamShare } from '../../core/form/beam';
import { lampsAt } from '../../core/form/lamps';
import type { LampForm } from '../../core/form/types';
import { greyLuminance } from '../../core/light/exposure';
import { glassOf } from '../../core/optics/camera';
import { cameraFromWorld } from '../../core/optics/project';
import { formsThrough } from '../../core/optics/riding';
import {
  STREAK_FALL,
  STREAK_FLOOR,
  STREAK_THICKNESS,
  streakPeak,
  streakReach,
} from '../../core/optics/stray';
import type { Camera } from '../../core/optics/types';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { meets } from '../../core/sight/rays';
import { type SightStage, type StagePart, stageOf } from '../../core/sight/stage';
import { radians } from '../light/beam';
import { colourOfLamp } from '../light/kelvin';
import type { Streak, StreakShape } from '../picture/streaks';

type Vec3 = readonly [number, number, number];

/** So far outside the frame a light still streaks into it, fading, degrees; common practice, no source. */
const FADE_DEGREES = 5;
/** What a lamp's lens shines to the side, outside of its beam, as its glow is drawn. */
const LEAST_SHARE = 0.004;
/** Wider than this, a lamp shines all round. */
const ROUND_DEGREES = 175;

/** The shape of a frame's streaks, as tangents. */
export const streakShapeOf = ({ frame }: Camera): StreakShape => ({
  fall: STREAK_FALL * 2 * frame.tanHalfWidth,
  thickness: STREAK_THICKNESS * 2 * frame.tanHalfHeight,
});

/**
 * The streaks that a setup's lens draws at an instant: of the lamps in its frame and a little beside it, as far as they
 * are seen from the lens, by how much of their light gets there. None for a lens that does not squeeze.
 */
export function streaksAt(plan: Plan, setup: Setup, seconds: number, camera: Camera): readonly Streak[] {
  if (glassOf(plan, setup).lens.squeeze === 1) return [];
  const grey = greyLuminance(setup);
  const eye = camera.pose.position;
  let stage: SightStage | null = null;
  const found = lampsAt(plan, seconds).flatMap((lamp): (Streak & { luminance: number })[] => {
    const [x, y, z] = cameraFromWorld(camera.pose, lamp.position);
    if (!(z > 0.05) || lamp.peakCandela === 0) return [];
    const at = [x / z, y / z] as const;
    const lux = luxInPicture(lamp, eye, z) * nearness(camera, at);
    const brightest = streakPeak(lux, camera.frame);
    if (streakReach(brightest, grey) === 0) return [];
    stage ??= stageThrough(plan, setup, seconds);
    const luminance = brightest * seenShare(stage, lamp, eye);
    if (streakReach(luminance, grey) === 0) return [];
    const [red, green, blue] = colourOfLamp(lamp);
    const peak = [red * luminance, green * luminance, blue * luminance] as const;
    return [{ at, peak, floor: (STREAK_FLOOR * grey) / luminance, luminance }];
  });
  return found.sort((a, b) => b.luminance - a.luminance);
}

let stageBefore: SightStage | null = null;

/** The stage of an instant; what stands as it stood at the last one is taken over from that. */
function stageThrough(plan: Plan, setup: Setup, seconds: number): SightStage {
  stageBefore = stageOf(formsThrough(plan, setup, seconds), stageBefore);
  return stageBefore;
}

/** A lamp's light in the picture, lux by tangents: its intensity towards the eye over the depth and the way to it. */
function luxInPicture(lamp: LampForm, eye: Vec3, depth: number): number {
  const way = [0, 1, 2].map((axis) => eye[axis] - lamp.position[axis]);
  const metres = Math.hypot(way[0], way[1], way[2]);
  const cosine = way.reduce((sum, step, axis) => sum + step * lamp.direction[axis], 0) / metres;
  const share =
    lamp.fieldDegrees >= ROUND_DEGREES
      ? 1
      : Math.max(LEAST_SHARE, beamShare(lamp.beamDegrees, lamp.fieldDegrees, cosine));
  return (lamp.peakCandela * share) / (depth * metres);
}

/** 1 in the frame, falling to 0 a few degrees beside it. */
function nearness({ frame }: Camera, [x, y]: readonly [number, number]): number {
  const beyond = (tangent: number, half: number) =>
    Math.max(0, Math.atan(Math.abs(tangent)) - Math.atan(half)) / radians(FADE_DEGREES);
  const off = Math.max(beyond(x, frame.tanHalfWidth), beyond(y, frame.tanHalfHeight));
  return Math.max(0, 1 - off) ** 2;
}

/** How much of a lamp is seen from the lens: its middle and four places of its face, through whatever lets light by. */
function seenShare(stage: SightStage, lamp: LampForm, eye: Vec3): number {
  const [width, height] = lamp.sizeMetres;
  const { direction: d } = lamp;
  const level = Math.hypot(d[0], d[2]);
  const side: Vec3 = level > 1e-3 ? [-d[2] / level, 0, d[0] / level] : [1, 0, 0];
  const up: Vec3 = [
    side[1] * d[2] - side[2] * d[1],
    side[2] * d[0] - side[0] * d[2],
    side[0] * d[1] - side[1] * d[0],
  ];
  const places = [
    [0, 0],
    [0.35, 0],
    [-0.35, 0],
    [0, 0.35],
    [0, -0.35],
  ].map(([a, b]): Vec3 => {
    const place = [0, 1, 2].map(
      (axis) => lamp.position[axis] + a * width * side[axis] + b * height * up[axis],
    );
    return [place[0], place[1], place[2]];
  });
  const parts = partsBetween(stage, lamp, eye, 0.35 * Math.max(width, height));
  return places.reduce((sum, place) => sum + clearShare(parts, eye, place), 0) / places.length;
}

/** What may stand between the eye and a lamp of some reach; what glows of the lamp itself is not in its way. */
function partsBetween(stage: SightStage, lamp: LampForm, eye: Vec3, reach: number): readonly StagePart[] {
  const way = [0, 1, 2].map((axis) => lamp.position[axis] - eye[axis]);
  const size = way[0] ** 2 + way[1] ** 2 + way[2] ** 2;
  return stage.parts.filter(({ centre, radius, item, shape: { substance } }) => {
    const [x, y, z] = [centre[0] - eye[0], centre[1] - eye[1], centre[2] - eye[2]];
    const along = Math.min(1, Math.max(0, (x * way[0] + y * way[1] + z * way[2]) / size));
    const away = (x - along * way[0]) ** 2 + (y - along * way[1]) ** 2 + (z - along * way[2]) ** 2;
    if (away > (radius + reach) ** 2) return false;
    const isOwn = stage.forms[item].id === lamp.itemId;
    return !(isOwn && (substance === 'glow' || substance === 'glass'));
  });
}

/** Share of the light from a place of a lamp that gets to the eye, past the parts between them. */
function clearShare(parts: readonly StagePart[], eye: Vec3, place: Vec3): number {
  const direction: Vec3 = [place[0] - eye[0], place[1] - eye[1], place[2] - eye[2]];
  let share = 1;
  for (const part of parts) {
    if (!(meets(part, { origin: eye, direction }) < 0.999)) continue;
    share *= part.shape.openness ?? 0;
    if (share === 0) return 0;
  }
  return share;
}
