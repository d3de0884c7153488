import type { Stance } from '../../../plan/schema/cast';
import type { Prop } from '../shape/props';
import type { Skeleton } from '../skeleton';
import { HANGING, holdingArms, withCarried } from './arms';
import { type Stride, stride } from './gait';
import type { ArmPose, LegPose, Pose } from './pose';

/** Height of the seat that a sitting performer sits on; common practice, no source. */
const SEAT_METRES = 0.45;

/** The weight on the left leg, the right one eased: how people stand. */
const STANDING: Pose = {
  pelvisShift: [-0.009, 0, 0],
  pelvisTurn: [0, -1.8, 2],
  chestTurn: [0, 2.6, -3],
  headTurn: [0, -0.8, 1],
  upright: 1,
  arms: [
    { ...HANGING, wrist: [0.07, -0.95, -0.15] },
    { ...HANGING, wrist: [0.1, -0.965, -0.08] },
  ],
  legs: [
    { ankle: [0.055, 0, -0.026], pitchDegrees: 0, toeOutDegrees: 14, kneeOutDegrees: 12 },
    { ankle: [0.046, 0, 0.006], pitchDegrees: 0, toeOutDegrees: 7, kneeOutDegrees: 5 },
  ],
  hands: ['relaxed', 'relaxed'],
  carry: 'right hand',
  drape: 'hanging',
};

const crouching: Pose = {
  pelvisShift: [0, -0.285, 0.075],
  pelvisTurn: [-14, 0, 3],
  chestTurn: [-20, 0, -3],
  headTurn: [26, 0, 0],
  upright: 0,
  arms: [
    { wrist: [-0.12, -0.52, -0.66], elbow: [0.7, -0.5, 0.3], palm: [-1, -0.2, 0], bendDegrees: 14 },
    { wrist: [-0.16, -0.6, -0.6], elbow: [0.7, -0.5, 0.3], palm: [-1, -0.4, 0], bendDegrees: 18 },
  ],
  legs: [
    { ankle: [0.075, 0, -0.085], pitchDegrees: 0, toeOutDegrees: 14, kneeOutDegrees: 18 },
    { ankle: [0.07, 0, 0.055], pitchDegrees: -42, toeOutDegrees: 8, kneeOutDegrees: 14 },
  ],
  hands: ['relaxed', 'relaxed'],
  carry: 'right hand',
  drape: 'gathered',
};

function sitting(skeleton: Skeleton): Pose {
  const { statureMetres: stature, sittingMetres } = skeleton.measures;
  const hip = SEAT_METRES + sittingMetres - (stature - skeleton.hip[1]);
  const drop = (hip - skeleton.hip[1]) / stature;
  const knee = (skeleton.thigh * 0.97) / stature;
  const dangling = Math.max(0, hip - skeleton.shin - skeleton.ankleHeight - 0.3 * skeleton.thigh) / stature;
  const leg = (more: Partial<LegPose>, ahead: number): LegPose => ({
    ankle: [0.075, dangling, -knee - ahead],
    pitchDegrees: 0,
    toeOutDegrees: 10,
    kneeOutDegrees: 12,
    ...more,
  });
  const arm: ArmPose = {
    wrist: [-0.08, -0.72, -0.5],
    elbow: [0.8, -0.2, 0.7],
    palm: [-0.25, -1, 0.3],
    bendDegrees: 12,
  };
  return {
    pelvisShift: [0, drop, 0],
    pelvisTurn: [6, 0, 0],
    chestTurn: [-8, 0, 0],
    headTurn: [2, 0, 0],
    upright: 0,
    arms: [arm, { ...arm, wrist: [-0.1, -0.7, -0.52] }],
    legs: [leg({}, 0.004), leg({ toeOutDegrees: 6 }, -0.03)],
    hands: ['relaxed', 'relaxed'],
    carry: 'right hand',
    drape: 'gathered',
  };
}

/** Leaning back against something just behind, the weight on one leg, the other foot set forward. */
const leaning: Pose = {
  pelvisShift: [0, -0.022, 0.07],
  pelvisTurn: [9, 2, 0],
  chestTurn: [-2, -2, 2],
  headTurn: [-7, 0, -2],
  upright: 0,
  arms: [
    { wrist: [0.06, -0.86, -0.22], elbow: [0.9, 0, 0.8], palm: [-1, 0, 0.6], bendDegrees: 20 },
    { wrist: [0.06, -0.86, -0.2], elbow: [0.9, 0, 0.8], palm: [-1, 0, 0.6], bendDegrees: 20 },
  ],
  legs: [
    { ankle: [0.034, 0, -0.115], pitchDegrees: 0, toeOutDegrees: 10, kneeOutDegrees: 6 },
    { ankle: [0.05, 0, -0.045], pitchDegrees: 0, toeOutDegrees: 8, kneeOutDegrees: 8 },
  ],
  hands: ['relaxed', 'relaxed'],
  carry: 'right hand',
  drape: 'hanging',
};

const ARM_OUT: ArmPose = { wrist: [1, 0, 0], elbow: [0, -0.4, 1], palm: [0, -1, 0], bendDegrees: 0 };
const REACHING: ArmPose = {
  wrist: [-0.1, -0.24, -0.92],
  elbow: [0.5, -1, 0],
  palm: [0, 1, 0],
  bendDegrees: -4,
};

/** A phase at which a stride, caught still, reads best. */
const CAUGHT_PHASE = 0.02;

/** How a performer holds themselves on the way, at a phase of the stride. */
export const stridePose = (
  { gait, phase, wayDegrees }: Pick<Stride, 'gait' | 'phase' | 'wayDegrees'>,
  prop: Prop | null,
): Pose => withCarried(stride(gait, phase, wayDegrees), prop);

/** How a performer holds themselves at a mark. Poses by eye; common practice, no source. */
export function poseOf(stance: Stance, skeleton: Skeleton, prop: Prop | null): Pose {
  switch (stance) {
    case 'stand':
      return withCarried(STANDING, prop);
    case 'walk':
    case 'run':
      return withCarried(stride(stance, CAUGHT_PHASE), prop);
    case 'crouch':
      return withCarried(crouching, prop);
    case 'sit':
      return withCarried(sitting(skeleton), prop);
    case 'lean':
      return withCarried(leaning, prop);
    case 'arms out': {
      const palmUp: ArmPose = { ...ARM_OUT, palm: [0, 1, 0] };
      return {
        ...STANDING,
        pelvisShift: [0, 0, 0],
        pelvisTurn: [0, 0, 0],
        chestTurn: [0, 0, 0],
        headTurn: [0, 0, 0],
        arms: [prop ? palmUp : ARM_OUT, ARM_OUT],
        hands: [prop === 'case' ? 'grip' : 'open', 'open'],
      };
    }
    case 'reach':
      return {
        ...STANDING,
        chestTurn: [-2, 2, -6],
        headTurn: [2, -0.2, 4],
        arms: [REACHING, STANDING.arms[1]],
        hands: [prop === 'case' ? 'grip' : 'open', 'relaxed'],
      };
    case 'holding':
      return {
        ...STANDING,
        arms: holdingArms(skeleton, prop),
        hands: ['relaxed', 'relaxed'],
        carry: 'both hands',
      };
  }
}
