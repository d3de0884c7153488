import type { Performer } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { hypot } from '../../units/steadyMath';
import { add, mix, scale, unit, type Vec3 } from '../build/vector';
import { type Figure, figureAt } from './figureAt';
import { intoOwn } from './looking';
import { armTo, type Trunk } from './pose/placeBones';
import { type ArmPose, mixArm, type Pose } from './pose/pose';
import { PROP_HALF, PROP_HEIGHT_IN_HANDS, type Prop } from './shape/props';
import { SIDES, type Skeleton } from './skeleton';
import { smooth, turnBetween } from './turning';
import { headingBetween } from './way/path';

/** Hands that reach for another's: where they meet, in the figure's own frame, and how much they do. */
export interface HandReach {
  readonly at: Vec3;
  readonly share: number;
  readonly prop: Prop;
  /** How the thing is still turned as the other held it, degrees from the own heading. */
  readonly propTurnDegrees: number;
}

/** People this far apart reach each other's hands; out to the second by and by less; common practice, no source. */
const WITHIN_METRES = 1.3;
const AT_MOST_METRES = 1.6;
/** Nobody reaches behind their back: from this far round on less, and nothing at the second. */
const BESIDE_DEGREES = 80;
const BEHIND_DEGREES = 130;
/** Height of the chest above the waist's joint, where hands meet, as a share of stature; common practice, no source. */
const CHEST_ABOVE_WAIST = 0.1;
/** How far each keeps their palms on their own side of the middle, metres. */
const OWN_SIDE_METRES = 0.04;

const chestHeight = ({ trunk, motion, skeleton }: Figure): number =>
  motion.at[1] + trunk.chest[7] + CHEST_ABOVE_WAIST * skeleton.measures.statureMetres;

/** How much somebody can reach for what lies that way. */
function easeOfReach({ motion }: Figure, wayDegrees: number): number {
  const round = Math.abs(turnBetween(motion.headingDegrees, wayDegrees));
  return smooth((BEHIND_DEGREES - round) / (BEHIND_DEGREES - BESIDE_DEGREES));
}

/** How a performer's hands reach for the other's round a pass at an instant; null for not at all. */
export function handReachAt(figure: Figure, plan: Plan, seconds: number): HandReach | null {
  const { carry, motion, worldFromOwn } = figure;
  const { meeting } = carry;
  if (!meeting || meeting.share <= 0) return null;
  const performer: Performer | undefined = plan.cast.find(({ id }) => id === meeting.otherId);
  const other = performer ? figureAt(performer, plan, seconds) : null;
  if (!other) return null;
  const [from, to] = [motion.at, other.motion.at];
  const way = headingBetween([from[0], from[2]], [to[0], to[2]]);
  if (way === null) return null;
  const apart = hypot(to[0] - from[0], to[2] - from[2]);
  const near = smooth((AT_MOST_METRES - apart) / (AT_MOST_METRES - WITHIN_METRES));
  // The same for both, so that their hands come and part together.
  const share = meeting.share * near * easeOfReach(figure, way) * easeOfReach(other, way + 180);
  if (share <= 0) return null;
  const [x, , z] = mix(from, to, 0.5);
  const turn = turnBetween(motion.headingDegrees, other.motion.headingDegrees);
  return {
    at: intoOwn(worldFromOwn, [x, (chestHeight(figure) + chestHeight(other)) / 2, z]),
    share,
    prop: meeting.prop,
    propTurnDegrees: meeting.hasCome ? turn * share : 0,
  };
}

/** Where a thing's foot is while the hands of two are on it, in the figure's own frame. */
export const propBetween = ({ at, prop }: HandReach): Vec3 => [
  at[0],
  at[1] - PROP_HEIGHT_IN_HANDS[prop],
  at[2],
];

type Hand = Pick<ArmPose, 'elbow' | 'palm' | 'bendDegrees'>;
const BOTH_HANDS: Hand = { elbow: [0.6, -0.8, 0.3], palm: [-1, 0.25, 0], bendDegrees: 2 };
const PALM_UP: Hand = { elbow: [0.5, -1, 0.2], palm: [-0.25, 1, 0], bendDegrees: 0 };
const GRIP: Hand = { ...PALM_UP, palm: [-1, 0, 0] };

/** The pose with the arms as far towards where hands meet as they are. */
export function reaching(pose: Pose, skeleton: Skeleton, trunk: Trunk, reach: HandReach): Pose {
  const { at, prop, share } = reach;
  const back = scale(unit([at[0], 0, at[2]]), -OWN_SIDE_METRES);
  const towards = (k: 0 | 1, palmAt: Vec3, hand: Hand): ArmPose =>
    mixArm(pose.arms[k], armTo(skeleton, trunk, SIDES[k], add(palmAt, back), hand), share);
  if (pose.carry === 'both hands') {
    const half = PROP_HALF[prop];
    const palm = (side: number): Vec3 => add(at, [side * half, 0, 0]);
    return { ...pose, arms: [towards(0, palm(1), BOTH_HANDS), towards(1, palm(-1), BOTH_HANDS)] };
  }
  const right = prop === 'case' ? towards(0, at, GRIP) : towards(0, propBetween(reach), PALM_UP);
  const open = share > 0.5 && pose.hands[0] === 'relaxed';
  return { ...pose, arms: [right, pose.arms[1]], hands: open ? ['open', pose.hands[1]] : pose.hands };
}
