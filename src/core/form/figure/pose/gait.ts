import { cos, hypot, sin } from '../../../units/steadyMath';
import { radians } from '../../build/vector';
import type { Side } from '../skeleton';
import { swungArm } from './arms';
import type { LegPose, Pose } from './pose';

/** Length of a step in shares of stature, walking and running; common practice, no source. */
export const STEP_SHARE = { walk: 0.43, run: 0.62 } as const;
/** Walking or running. */
export type Gait = keyof typeof STEP_SHARE;

/** A stride at an instant. */
export interface Stride {
  readonly gait: Gait;
  /** 0 to 1 over a cycle of two steps. */
  readonly phase: number;
  /** Which way it goes, clockwise from where the body faces; 180 backwards. */
  readonly wayDegrees: number;
  /** How much of it there is already or still: 0 at a mark. */
  readonly share: number;
}

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

const curvesOf = (gait: Gait): LegCurves => (gait === 'run' ? RUN : WALK);

/**
 * Going sideways: how far a foot goes out to each side of where it stands, and how much wider the feet stand, in
 * shares of stature; common practice, no source.
 */
const SIDE_STEP = { half: 0.08, wider: 0.069 } as const;

/** Half of how far a foot goes to and fro under the body, shares of stature. */
const halfStep = ({ front, back }: LegCurves): number => (back - front) / 2;

/** Half a step's length in a direction, of an ellipse whose long axis lies ahead. */
function reachOf(curves: LegCurves, wayDegrees: number): number {
  const ahead = halfStep(curves);
  const [c, s] = [cos(radians(wayDegrees)), sin(radians(wayDegrees))];
  return (ahead * SIDE_STEP.half) / hypot(SIDE_STEP.half * c, ahead * s);
}

/** How long a walker's step is when it goes that way from where the body faces, as a share of one ahead. */
export const paceOf = (wayDegrees: number, gait: Gait = 'walk'): number =>
  reachOf(curvesOf(gait), wayDegrees) / halfStep(curvesOf(gait));

/** The phase of a step ahead whose pose a step backwards has: the same motion, run the other way. */
export function backwardsPhase(gait: Gait, phase: number): number {
  const back = curvesOf(gait).stands - phase;
  return back - Math.floor(back);
}

/**
 * A leg at a phase, going `wayDegrees` from where the body faces. While a foot stands it goes straight back against the
 * way, evenly, so that it does not slide; backwards, heel and toe do what they do ahead in the other order.
 */
function legAt(gait: Gait, phase: number, wayDegrees: number, side: Side): LegPose {
  const curves = curvesOf(gait);
  const { stands, front, back } = curves;
  const share = phase < stands ? phase / stands : 1 - (phase - stands) / (1 - stands);
  const gone = phase < stands ? share : share * share * (3 - 2 * share);
  const [ahead, aside] = [cos(radians(wayDegrees)), sin(radians(wayDegrees))];
  const off = reachOf(curves, wayDegrees) * (1 - 2 * gone);
  const sideways = aside * aside;
  const forwards = ahead > 0 ? ahead * ahead : 0;
  const backwards = ahead < 0 ? ahead * ahead : 0;
  const reversed = backwards > 0 ? backwardsPhase(gait, phase) : 0;
  return {
    ankle: [
      0.036 + SIDE_STEP.wider * sideways + side * off * aside,
      (1 - backwards) * along(curves.lift, phase) + backwards * along(curves.lift, reversed),
      ((front + back) / 2) * (1 - sideways) - off * ahead,
    ],
    pitchDegrees: forwards * along(curves.pitch, phase) + backwards * along(curves.pitch, reversed),
    toeOutDegrees: 5,
    kneeOutDegrees: 3,
  };
}

/**
 * A stride at a phase of its cycle (0 to 1, 0 at the right heel's strike): two steps a cycle, arms against legs, going
 * `wayDegrees` clockwise from where the body faces. Motion by eye; common practice, no source.
 */
export function stride(gait: Gait, phase: number, wayDegrees = 0): Pose {
  const right = phase - Math.floor(phase);
  const left = (right + 0.5) % 1;
  const ahead = cos(radians(wayDegrees));
  const swing = cos(radians(360 * right)) * ahead;
  const twice = cos(radians(720 * right));
  const running = gait === 'run';
  const arm = (forwards: number) =>
    running
      ? swungArm(4 + 38 * forwards, 88 + 14 * forwards, -0.02 - 0.05 * Math.max(0, forwards))
      : swungArm(3 + 21 * forwards, 16 + 11 * forwards, 0.07 - 0.05 * Math.max(0, forwards));
  const yaw = running ? 9 : 5;
  return {
    // Weight goes to the standing leg; the rise and fall comes from the legs' own reach.
    pelvisShift: [0.012 * sin(radians(360 * right)), running ? -0.028 - 0.018 * twice : -0.006, 0],
    pelvisTurn: [(running ? -6 : -1.5) * ahead, 2.2 * sin(radians(360 * right)), -yaw * swing],
    chestTurn: [(running ? -8 : -2) * ahead, -2 * sin(radians(360 * right)), yaw * 2 * swing],
    headTurn: [(running ? 11 : 3.5) * ahead, 0, -yaw * swing],
    upright: 0,
    arms: [arm(-swing), arm(swing)],
    legs: [legAt(gait, right, wayDegrees, 1), legAt(gait, left, wayDegrees, -1)],
    hands: ['relaxed', 'relaxed'],
    carry: 'right hand',
    drape: 'hanging',
  };
}
