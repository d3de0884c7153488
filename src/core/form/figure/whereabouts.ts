import type { Performer, Stance } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { compose, moved, type Placement, standingAt } from '../build/placement';
import type { Vec3 } from '../build/vector';
import { bodyOf } from './body';
import { type Motion, motionAt } from './motion';
import { type Bones, placeBones } from './pose/placeBones';
import { mixPose, type Pose } from './pose/pose';
import { poseOf } from './pose/stances';
import { trackOf } from './track';

/** Where a performer is at an instant, and how they hold themselves. */
export interface Whereabouts {
  /** Between the feet, on the floor; metres. */
  readonly at: Vec3;
  readonly headingDegrees: number;
  readonly stance: Stance;
  /** 0 to 1 over a cycle of two steps from the right heel's strike; 0 at a mark. */
  readonly walkPhase: number;
  readonly speedMetresPerSecond: number;
  /** Midway between the eyes, metres. */
  readonly eyes: Vec3;
  readonly isMoving: boolean;
}

/** The figure at an instant: where its own frame stands, and its bones in that frame. */
export interface Placed {
  readonly motion: Motion;
  readonly pose: Pose;
  readonly worldFromOwn: Placement;
  readonly bones: Bones;
}

const sameMotion = (a: Motion, b: Motion): boolean =>
  a.at[0] === b.at[0] &&
  a.at[1] === b.at[1] &&
  a.at[2] === b.at[2] &&
  a.headingDegrees === b.headingDegrees &&
  a.stance === b.stance &&
  a.walkPhase === b.walkPhase &&
  a.settling.stance === b.settling.stance &&
  a.settling.strideShare === b.settling.strideShare;

/** The last placing of each performer: the same instant is asked for many times, and at a mark nothing changes. */
const lastPlaced = new WeakMap<Performer, Placed>();

/** Places a performer's bones at an instant of the action's clock; null without marks. The same object while still. */
export function placedAt(performer: Performer, plan: Plan, seconds: number): Placed | null {
  const motion = motionAt(trackOf(performer, plan), seconds);
  if (!motion) return null;
  const last = lastPlaced.get(performer);
  if (last && sameMotion(last.motion, motion)) return last;
  const { skeleton } = bodyOf(performer);
  const rest = poseOf(motion.settling.stance, skeleton, performer.prop);
  const pose =
    motion.walkPhase === null
      ? rest
      : mixPose(
          rest,
          poseOf(motion.stance, skeleton, performer.prop, motion.walkPhase),
          motion.settling.strideShare,
        );
  const placed: Placed = {
    motion,
    pose,
    worldFromOwn: standingAt(motion.at, motion.headingDegrees),
    bones: placeBones(skeleton, pose),
  };
  lastPlaced.set(performer, placed);
  return placed;
}

/**
 * Where a performer is at an instant of the action's clock: at a mark from its beat for as long as it holds, then on a
 * straight line so as to reach the next mark at its beat, facing the way, with a turn at either end. Before the first
 * mark at the first, after the last at the last; null without marks. `seconds` may be any finite number.
 */
export function whereabouts(performer: Performer, plan: Plan, seconds: number): Whereabouts | null {
  const placed = placedAt(performer, plan, seconds);
  if (!placed) return null;
  const { motion, worldFromOwn, bones } = placed;
  return {
    at: motion.at,
    headingDegrees: motion.headingDegrees,
    stance: motion.stance,
    walkPhase: motion.walkPhase ?? 0,
    speedMetresPerSecond: motion.speedMetresPerSecond,
    eyes: moved(compose(worldFromOwn, bones.head), bodyOf(performer).skeleton.eyes),
    isMoving: motion.isMoving,
  };
}
