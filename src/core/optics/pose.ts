import { add, directionOf, mix, radians, scale, type Vec3 } from '../form/build/vector';
import type { CameraKey, Setup } from '../plan/schema/setup';
import { atan2, cos, hypot, sin } from '../units/steadyMath';
import type { CameraPose } from './types';

/**
 * The axes of a camera: pan as a compass heading, tilt up-positive, roll clockwise-positive as the operator sees it.
 * Degrees; right, up and forward are unit vectors, square to each other.
 */
export function poseOf(
  position: Vec3,
  headingDegrees: number,
  tiltDegrees: number,
  rollDegrees: number,
): CameraPose {
  const forward = directionOf(headingDegrees, tiltDegrees);
  const level = directionOf(headingDegrees + 90);
  const upright = directionOf(headingDegrees, tiltDegrees + 90);
  const cosine = cos(radians(rollDegrees));
  const sine = sin(radians(rollDegrees));
  return {
    position,
    forward,
    right: add(scale(level, cosine), scale(upright, -sine)),
    up: add(scale(upright, cosine), scale(level, sine)),
  };
}

/** Pan, tilt in degrees that point a camera at `position` towards `target`. */
export function aimedAt(
  position: Vec3,
  target: Vec3,
): { readonly headingDegrees: number; readonly tiltDegrees: number } {
  const x = target[0] - position[0];
  const y = target[1] - position[1];
  const z = target[2] - position[2];
  const degrees = 180 / Math.PI;
  return {
    headingDegrees: atan2(x, -z) * degrees,
    tiltDegrees: atan2(y, hypot(x, z)) * degrees,
  };
}

/** Share of the way between two keys: straight, or settling at both ends (3u² − 2u³). */
function eased(ease: Setup['move']['ease'], share: number): number {
  return ease === 'linear' ? share : share * share * (3 - 2 * share);
}

/** Between which two keys a move is at an instant, and how far on; the same key twice before the first and after the last. */
export interface Stretch {
  readonly from: CameraKey;
  readonly to: CameraKey;
  /** 0..1, eased where the move is. */
  readonly share: number;
}

/** Where a move is at an instant of the action's clock. Its keys are in order and count on that clock. */
export function stretchAt(keys: readonly CameraKey[], ease: Setup['move']['ease'], seconds: number): Stretch {
  const first = keys[0];
  const last = keys[keys.length - 1];
  if (seconds <= first.atSeconds) return { from: first, to: first, share: 0 };
  if (seconds >= last.atSeconds) return { from: last, to: last, share: 0 };
  const next = keys.findIndex((key) => key.atSeconds > seconds);
  const from = keys[next - 1];
  const to = keys[next];
  return { from, to, share: eased(ease, (seconds - from.atSeconds) / (to.atSeconds - from.atSeconds)) };
}

/** A number on its way between two keys. */
export const along = ({ share }: Stretch, from: number, to: number): number => from + (to - from) * share;

/**
 * The camera's key at an instant of the action's clock. Before the first key it rests there, after the last it
 * rests there. Pan runs through the numbers as written: 350 to 370 turns 20° clockwise.
 */
export function keyAt(
  move: { readonly ease: Setup['move']['ease']; readonly keys: readonly CameraKey[] },
  seconds: number,
): CameraKey {
  const stretch = stretchAt(move.keys, move.ease, seconds);
  const { from, to, share } = stretch;
  if (from === to) return from;
  const [x, y, z] = mix(from.position, to.position, share);
  return {
    atSeconds: seconds,
    position: [x, y, z],
    headingDegrees: along(stretch, from.headingDegrees, to.headingDegrees),
    tiltDegrees: along(stretch, from.tiltDegrees, to.tiltDegrees),
    rollDegrees: along(stretch, from.rollDegrees, to.rollDegrees),
  };
}
