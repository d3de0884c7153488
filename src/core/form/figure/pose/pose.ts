import { mix, type Vec3 } from '../../build/vector';
import type { HandHold } from '../shape/hand';
import type { Drape } from '../shape/hips';

/** An arm, told as on the right side: x is outwards, y up, −z ahead, in the frame of the chest. */
export interface ArmPose {
  /** From the shoulder to the wrist, in lengths of upper arm and forearm together. */
  readonly wrist: Vec3;
  /** Which way the elbow points. */
  readonly elbow: Vec3;
  /** Which way the palm faces. */
  readonly palm: Vec3;
  /** How far the hand bends towards its palm, degrees. */
  readonly bendDegrees: number;
}

/** A leg, told as on the right side. */
export interface LegPose {
  /** Where the ankle would be with the sole level: outwards, clearance under the sole, and ahead (−z); shares of stature. */
  readonly ankle: Vec3;
  /** Toe up positive. The heel rises about the ball of the foot, the toes about the heel. */
  readonly pitchDegrees: number;
  readonly toeOutDegrees: number;
  /** How far outwards the knee points, degrees. */
  readonly kneeOutDegrees: number;
}

/** Pitch (leaning back positive), roll (to the own left positive), yaw (to the own right positive), degrees. */
export type Turn = Vec3;

/** How a body holds itself, whoever it belongs to. */
export interface Pose {
  /** Of the middle between the hip joints from where it is when standing, shares of stature. */
  readonly pelvisShift: Vec3;
  readonly pelvisTurn: Turn;
  /** Of the chest against the pelvis, of the head against the chest. */
  readonly chestTurn: Turn;
  readonly headTurn: Turn;
  /** 1 where the crown stands at the full stature whatever the spine does. */
  readonly upright: number;
  /** Right, left. */
  readonly arms: readonly [ArmPose, ArmPose];
  readonly legs: readonly [LegPose, LegPose];
  readonly hands: readonly [HandHold, HandHold];
  /** How the prop is carried. */
  readonly carry: 'right hand' | 'both hands';
  readonly drape: Drape;
}

const between = (a: number, b: number, share: number): number => a + (b - a) * share;

/** An arm on the way from one pose to another. */
export const mixArm = (a: ArmPose, b: ArmPose, share: number): ArmPose => ({
  wrist: mix(a.wrist, b.wrist, share),
  elbow: mix(a.elbow, b.elbow, share),
  palm: mix(a.palm, b.palm, share),
  bendDegrees: between(a.bendDegrees, b.bendDegrees, share),
});

const mixLeg = (a: LegPose, b: LegPose, share: number): LegPose => ({
  ankle: mix(a.ankle, b.ankle, share),
  pitchDegrees: between(a.pitchDegrees, b.pitchDegrees, share),
  toeOutDegrees: between(a.toeOutDegrees, b.toeOutDegrees, share),
  kneeOutDegrees: between(a.kneeOutDegrees, b.kneeOutDegrees, share),
});

/** A pose on the way from one to another; hands and prop change over half way. */
export function mixPose(a: Pose, b: Pose, share: number): Pose {
  if (share <= 0) return a;
  if (share >= 1) return b;
  const nearer = share < 0.5 ? a : b;
  return {
    pelvisShift: mix(a.pelvisShift, b.pelvisShift, share),
    pelvisTurn: mix(a.pelvisTurn, b.pelvisTurn, share),
    chestTurn: mix(a.chestTurn, b.chestTurn, share),
    headTurn: mix(a.headTurn, b.headTurn, share),
    upright: between(a.upright, b.upright, share),
    arms: [mixArm(a.arms[0], b.arms[0], share), mixArm(a.arms[1], b.arms[1], share)],
    legs: [mixLeg(a.legs[0], b.legs[0], share), mixLeg(a.legs[1], b.legs[1], share)],
    hands: nearer.hands,
    carry: nearer.carry,
    drape: nearer.drape,
  };
}
