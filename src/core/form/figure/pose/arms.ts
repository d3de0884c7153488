import { cos, sin } from '../../../units/steadyMath';
import { radians } from '../../build/vector';
import { PROP_HALF, type Prop } from '../shape/props';
import type { Skeleton } from '../skeleton';
import type { ArmPose, Pose } from './pose';

/** An arm that hangs at the side, a little bent. */
export const HANGING: ArmPose = {
  wrist: [0.09, -0.965, -0.1],
  elbow: [0.3, 0, 1],
  palm: [-1, 0, 0.3],
  bendDegrees: 6,
};

/** The right forearm level, palm up, something resting on it. */
const CARRYING: ArmPose = {
  wrist: [-0.02, -0.56, -0.46],
  elbow: [0.4, -0.4, 1],
  palm: [-0.25, 1, 0],
  bendDegrees: -6,
};

/** An arm swung in its own plane: degrees ahead of hanging, and the bend of the elbow. */
export function swungArm(aheadDegrees: number, elbowDegrees: number, out: number): ArmPose {
  const upper = radians(aheadDegrees);
  const fore = radians(aheadDegrees + elbowDegrees);
  return {
    wrist: [out, -0.537 * cos(upper) - 0.463 * cos(fore), -0.537 * sin(upper) - 0.463 * sin(fore)],
    elbow: [0.25, -0.3, 1],
    palm: [-1, 0, 0.25],
    bendDegrees: 5,
  };
}

/** Both hands in front of the chest, about as far apart as what they hold; with nothing, one laid into the other. */
export function holdingArms(skeleton: Skeleton, prop: Prop | null): [ArmPose, ArmPose] {
  const reach = skeleton.upperArm + skeleton.forearm;
  const out = (metres: number): number => (metres - skeleton.shoulder[0]) / reach;
  if (!prop) {
    const arm: ArmPose = {
      wrist: [out(0.075), -0.73, -0.36],
      elbow: [0.8, -0.2, 0.7],
      palm: [-0.35, 0.75, 0.55],
      bendDegrees: 16,
    };
    return [arm, { ...arm, wrist: [out(0.06), -0.66, -0.4], palm: [-0.45, -0.2, 0.9], bendDegrees: 26 }];
  }
  const half = PROP_HALF[prop];
  const small = half < 0.08;
  const arm: ArmPose = {
    wrist: [out(half + 0.03), -0.4, small ? -0.52 : -0.46],
    elbow: [0.75, -0.65, 0.5],
    palm: small ? [-0.75, 0.65, 0] : [-1, 0.25, 0],
    bendDegrees: small ? 8 : 2,
  };
  return [arm, arm];
}

/** A pose with the right hand given to what the performer carries. */
export function withCarried(pose: Pose, prop: Prop | null): Pose {
  if (!prop || pose.carry === 'both hands') return pose;
  if (prop === 'case') {
    const arm: ArmPose = { wrist: [0.16, -0.975, 0], elbow: [0.3, 0, 1], palm: [-1, 0, 0], bendDegrees: 0 };
    return { ...pose, arms: [arm, pose.arms[1]], hands: ['grip', pose.hands[1]] };
  }
  return { ...pose, arms: [CARRYING, pose.arms[1]], hands: ['open', pose.hands[1]] };
}
