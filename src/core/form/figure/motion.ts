import type { Stance } from '../../plan/schema/cast';
import type { Vec3 } from '../build/vector';
import { type Course, headingAt } from './course';
import { changedOnTheSpot, placeAt } from './place';
import type { Stride } from './pose/gait';
import { smooth, turnBetween } from './turning';

/** A performer's movement at an instant, before any pose. */
export interface Motion {
  readonly at: Vec3;
  readonly headingDegrees: number;
  readonly speedMetresPerSecond: number;
  readonly isMoving: boolean;
  /** The stance at the mark that they are at, come from or go to; and the next one, while one becomes the other. */
  readonly stance: Stance;
  readonly nextStance: Stance;
  readonly changedShare: number;
  /** Null at a mark and on the spot. */
  readonly stride: Stride | null;
}

/** Time in which a stance becomes a stride and back; common practice, no source. */
const SETTLE_SECONDS = 0.45;

/** Where a course has its performer at an instant; null without marks. */
export function motionAt(course: Course, seconds: number): Motion | null {
  const place = placeAt(course.track, seconds);
  if (!place) return null;
  const { stays, walks } = course.track;
  const { stay: k, gone, at, speedMetresPerSecond } = place;
  const headingDegrees = headingAt(course, place, seconds);
  const still = { at, headingDegrees, speedMetresPerSecond, isMoving: false, changedShare: 0, stride: null };
  const { stance } = stays[k];
  if (gone === null) return { ...still, stance, nextStance: stance };
  const walk = walks[k];
  const next = stays[k + 1].stance;
  if (!walk.goes) {
    return { ...still, stance, nextStance: next, changedShare: changedOnTheSpot(walk, gone) };
  }
  const left = walk.seconds - gone;
  const nearer = gone < left ? stance : next;
  const strides = course.strides(k, gone, place.metres);
  return {
    ...still,
    isMoving: true,
    stance: nearer,
    nextStance: nearer,
    stride: {
      gait: walk.gait,
      phase: strides - Math.floor(strides),
      wayDegrees: turnBetween(headingDegrees, course.walk(k).way.at(seconds)),
      share: smooth(Math.min(gone, left) / Math.min(SETTLE_SECONDS, walk.seconds / 2)),
    },
  };
}
