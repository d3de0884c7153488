import type { Performer } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { type Placement, standingAt } from '../build/placement';
import { skeletonFor } from './body';
import { courseOf } from './course';
import { type Carry, carryAt } from './handing';
import { type Motion, motionAt } from './motion';
import { placeTrunk, type Trunk } from './pose/placeBones';
import { mixPose, type Pose } from './pose/pose';
import { poseOf, stridePose } from './pose/stances';
import type { Prop } from './shape/props';
import type { Skeleton } from './skeleton';

/** A performer at an instant, before the head turns and the hands reach: what others may depend on. */
export interface Figure {
  readonly motion: Motion;
  readonly carry: Carry;
  readonly skeleton: Skeleton;
  readonly pose: Pose;
  readonly trunk: Trunk;
  readonly worldFromOwn: Placement;
}

function isSameMotion(a: Motion, b: Motion): boolean {
  const [p, q] = [a.stride, b.stride];
  return (
    a.at[0] === b.at[0] &&
    a.at[1] === b.at[1] &&
    a.at[2] === b.at[2] &&
    a.headingDegrees === b.headingDegrees &&
    a.stance === b.stance &&
    a.nextStance === b.nextStance &&
    a.changedShare === b.changedShare &&
    (p === q ||
      (p !== null &&
        q !== null &&
        p.gait === q.gait &&
        p.phase === q.phase &&
        p.wayDegrees === q.wayDegrees &&
        p.share === q.share))
  );
}

const isSameCarry = (a: Carry, b: Carry): boolean =>
  a.prop === b.prop &&
  a.from === b.from &&
  a.to === b.to &&
  a.share === b.share &&
  a.meeting?.share === b.meeting?.share;

function poseAt(
  { stance, nextStance, changedShare, stride }: Motion,
  skeleton: Skeleton,
  prop: Prop | null,
): Pose {
  const here = poseOf(stance, skeleton, prop);
  const rest = changedShare > 0 ? mixPose(here, poseOf(nextStance, skeleton, prop), changedShare) : here;
  return stride ? mixPose(rest, stridePose(stride, prop), stride.share) : rest;
}

function build(performer: Performer, motion: Motion, carry: Carry): Figure {
  const skeleton = skeletonFor(performer);
  const pose =
    carry.from === carry.to
      ? poseAt(motion, skeleton, carry.prop)
      : mixPose(poseAt(motion, skeleton, carry.from), poseAt(motion, skeleton, carry.to), carry.share);
  return {
    motion,
    carry,
    skeleton,
    pose,
    trunk: placeTrunk(skeleton, pose),
    worldFromOwn: standingAt(motion.at, motion.headingDegrees),
  };
}

interface Kept {
  readonly cast: Plan['cast'];
  readonly beats: Plan['beats'];
  readonly passes: Plan['passes'];
  readonly seconds: number;
  readonly figure: Figure;
}

/** The last figure of each performer: one instant is asked for many times, and at a mark nothing changes. */
const last = new WeakMap<Performer, Kept>();

/** A performer's figure at an instant of the action's clock; null without marks. The same object while still. */
export function figureAt(performer: Performer, plan: Plan, seconds: number): Figure | null {
  const known = last.get(performer);
  const { cast, beats, passes } = plan;
  if (
    known &&
    known.seconds === seconds &&
    known.cast === cast &&
    known.beats === beats &&
    known.passes === passes
  ) {
    return known.figure;
  }
  const motion = motionAt(courseOf(performer, plan), seconds);
  if (!motion) return null;
  const carry = carryAt(performer, plan, seconds);
  const isSame = known && isSameMotion(known.figure.motion, motion) && isSameCarry(known.figure.carry, carry);
  const figure = isSame ? known.figure : build(performer, motion, carry);
  last.set(performer, { cast, beats, passes, seconds, figure });
  return figure;
}
