import { cos, sin } from '../../../units/steadyMath';
import { radians } from '../../build/vector';
import { swungArm } from './arms';
import type { LegPose, Pose } from './pose';

/** Length of a step in shares of stature, walking and running; common practice, no source. */
export const STEP_SHARE = { walk: 0.43, run: 0.62 } as const;
/** Walking or running. */
export type Gait = keyof typeof STEP_SHARE;

/** Keys of a curve over one cycle: [phase 0…1, value], first at 0, last at 1 with the first's value. */
type Curve = readonly (readonly [number, number])[];

function along(curve: Curve, phase: number): number {
  let k = 1;
  while (k < curve.length - 1 && phase > curve[k][0]) k += 1;
  const [from, start] = curve[k - 1];
  const [to, end] = curve[k];
  const share = (phase - from) / (to - from);
  return start + (end - start) * share * share * (3 - 2 * share);
}

/** A leg's curves from one heel strike to the next; common practice, no source. */
interface LegCurves {
  /** Share of the cycle during which the foot stands. */
  readonly stands: number;
  readonly front: number;
  readonly back: number;
  readonly pitch: Curve;
  readonly lift: Curve;
}
const WALK: LegCurves = {
  stands: 0.6,
  front: -0.19,
  back: 0.275,
  pitch: [
    [0, 18],
    [0.09, 0],
    [0.36, 0],
    [0.6, -54],
    [0.74, -22],
    [0.88, 10],
    [1, 18],
  ],
  lift: [
    [0, 0],
    [0.6, 0],
    [0.72, 0.035],
    [0.86, 0.018],
    [1, 0],
  ],
};
const RUN: LegCurves = {
  stands: 0.36,
  front: -0.13,
  back: 0.26,
  pitch: [
    [0, 6],
    [0.08, 0],
    [0.18, 0],
    [0.38, -58],
    [0.6, -62],
    [0.82, -8],
    [1, 6],
  ],
  lift: [
    [0, 0],
    [0.36, 0],
    [0.6, 0.2],
    [0.8, 0.12],
    [1, 0],
  ],
};

function legAt(curves: LegCurves, phase: number): LegPose {
  const { stands, front, back } = curves;
  const share = phase < stands ? phase / stands : 1 - (phase - stands) / (1 - stands);
  const ahead = phase < stands ? share : share * share * (3 - 2 * share);
  return {
    ankle: [0.036, along(curves.lift, phase), front + (back - front) * ahead],
    pitchDegrees: along(curves.pitch, phase),
    toeOutDegrees: 5,
    kneeOutDegrees: 3,
  };
}

/**
 * A stride at a phase of its cycle (0 to 1, 0 at the right heel's strike): two steps a cycle, arms against legs.
 * Motion by eye; common practice, no source.
 */
export function stride(gait: Gait, phase: number): Pose {
  const right = phase - Math.floor(phase);
  const left = (right + 0.5) % 1;
  const swing = cos(radians(360 * right));
  const twice = cos(radians(720 * right));
  const running = gait === 'run';
  const curves = running ? RUN : WALK;
  const arm = (ahead: number) =>
    running
      ? swungArm(4 + 38 * ahead, 88 + 14 * ahead, -0.02 - 0.05 * Math.max(0, ahead))
      : swungArm(3 + 21 * ahead, 16 + 11 * ahead, 0.07 - 0.05 * Math.max(0, ahead));
  const yaw = running ? 9 : 5;
  return {
    // Weight goes to the standing leg; the rise and fall comes from the legs' own reach.
    pelvisShift: [0.012 * sin(radians(360 * right)), running ? -0.028 - 0.018 * twice : -0.006, 0],
    pelvisTurn: [running ? -6 : -1.5, 2.2 * sin(radians(360 * right)), -yaw * swing],
    chestTurn: [running ? -8 : -2, -2 * sin(radians(360 * right)), yaw * 2 * swing],
    headTurn: [running ? 11 : 3.5, 0, -yaw * swing],
    upright: 0,
    arms: [arm(-swing), arm(swing)],
    legs: [legAt(curves, right), legAt(curves, left)],
    hands: ['relaxed', 'relaxed'],
    carry: 'right hand',
    drape: 'hanging',
  };
}
