import type { Performer } from '../../plan/schema/cast';
import type { Vec3 } from '../build/vector';
import { type Measures, measuresOf } from './proportions';

/** The two sides of a body by the sign of x in its own frame: it faces −z, so its right is +x. */
export type Side = 1 | -1;
/** Right, left. */
export const SIDES: readonly Side[] = [1, -1];

/**
 * Joints of the upright body in its own frame, metres; paired joints as on the right side (+x).
 * Where the survey has no measure, a joint's place is common practice, no source.
 */
export interface Skeleton {
  readonly measures: Measures;
  readonly hip: Vec3;
  readonly waist: Vec3;
  readonly neck: Vec3;
  readonly head: Vec3;
  readonly shoulder: Vec3;
  readonly thigh: number;
  readonly shin: number;
  readonly ankleHeight: number;
  readonly upperArm: number;
  readonly forearm: number;
  readonly hand: number;
  /** Midway between the eyes, in the head's frame. */
  readonly eyes: Vec3;
  /** Height of the crown in the head's frame. */
  readonly crown: number;
}

/** A hair's breadth of slack, so that a leg that bears the weight is straight without being locked. */
const LEG_SLACK = 1.007;

/** A performer's joints, from their measures. */
export function skeletonOf(who: Pick<Performer, 'figure' | 'statureMetres' | 'build'>): Skeleton {
  const measures = measuresOf(who);
  const stature = measures.statureMetres;
  const hipHeight = measures.crotchMetres + 0.04 * stature;
  const ankleHeight = 0.041 * stature;
  const shoulderOut = measures.biacromialMetres / 2 - 0.012 * stature;
  const arm = measures.spanMetres / 2 - shoulderOut;
  const headHeight = 0.9 * stature;
  return {
    measures,
    hip: [(who.figure === 'female' ? 0.052 : 0.05) * stature, hipHeight, 0],
    waist: [0, 0.58 * stature, 0.008 * stature],
    neck: [0, 0.838 * stature, 0.014 * stature],
    head: [0, headHeight, -0.006 * stature],
    shoulder: [shoulderOut, measures.acromialMetres - 0.03 * stature, 0.008 * stature],
    thigh: (hipHeight - measures.kneeMetres) * LEG_SLACK,
    shin: (measures.kneeMetres - ankleHeight) * LEG_SLACK,
    ankleHeight,
    upperArm: 0.4 * arm,
    forearm: 0.345 * arm,
    hand: 0.255 * arm,
    eyes: [0, measures.eyeMetres - headHeight, -0.4 * measures.headLengthMetres - 0.006 * stature],
    crown: stature - headHeight,
  };
}
