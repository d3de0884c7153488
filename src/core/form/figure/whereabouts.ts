import type { Performer, Stance } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { compose, moved } from '../build/placement';
import type { Vec3 } from '../build/vector';
import { gazeOf } from './looking';
import { placedAt } from './placed';
import { backwardsPhase } from './pose/gait';

/** Where a performer is at an instant, and how they hold themselves. */
export interface Whereabouts {
  /** Between the feet, on the floor; metres. */
  readonly at: Vec3;
  readonly headingDegrees: number;
  readonly stance: Stance;
  /** 0 to 1 over a cycle of two steps from the right heel's strike, running down on a walk backwards; 0 at a mark. */
  readonly walkPhase: number;
  readonly speedMetresPerSecond: number;
  /** Midway between the eyes, metres. */
  readonly eyes: Vec3;
  /** Where the face points, a unit vector from the eyes. */
  readonly gaze: Vec3;
  /** The compass heading of the gaze, within 180 degrees of the body's. */
  readonly headHeadingDegrees: number;
  readonly isMoving: boolean;
}

/** From here on a walk counts as one backwards, clear of one sideways. */
const BACKWARDS_FROM_DEGREES = 135;

/**
 * Where a performer is at an instant of the action's clock: at a mark from its beat for as long as it holds, then on
 * the way so as to reach the next mark at its beat, facing the way or what they face on it, with a turn at either end.
 * Before the first mark at the first, after the last at the last; null without marks. `seconds` may be any finite
 * number.
 */
export function whereabouts(performer: Performer, plan: Plan, seconds: number): Whereabouts | null {
  const placed = placedAt(performer, plan, seconds);
  if (!placed) return null;
  const { figure, bones } = placed;
  const { motion, worldFromOwn, skeleton } = figure;
  const { stride } = motion;
  let walkPhase = stride?.phase ?? 0;
  if (stride && Math.abs(stride.wayDegrees) > BACKWARDS_FROM_DEGREES)
    walkPhase = backwardsPhase(stride.gait, stride.phase);
  return {
    at: motion.at,
    headingDegrees: motion.headingDegrees,
    stance: stride?.gait ?? (motion.changedShare < 0.5 ? motion.stance : motion.nextStance),
    walkPhase,
    speedMetresPerSecond: motion.speedMetresPerSecond,
    eyes: moved(compose(worldFromOwn, bones.head), skeleton.eyes),
    ...gazeOf(worldFromOwn, bones.head, motion.headingDegrees),
    isMoving: motion.isMoving,
  };
}
