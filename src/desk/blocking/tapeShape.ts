import { whereabouts } from '../../core/form/figure/whereabouts';
import type { Mark, Performer } from '../../core/plan/schema/cast';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';
import { secondsOfBeat } from './things';

type Corner = readonly [number, number];

/** Tape of two inches laid in a T of a foot either way: common practice, no source. Metres. */
const TAPE = 0.05;
const ARM = 0.3;
/** The bar lies under the toes: so far ahead of the middle between the feet, to its own middle. */
const TOES = 0.13;

const [HALF, EDGE] = [ARM / 2, TAPE / 2];
const [FRONT, BACK, END] = [-TOES - EDGE, -TOES + EDGE, -TOES - EDGE + ARM];

/** A taped T around the place between the feet of who stands on it and faces −z: the bar under the toes, the stem towards the heels. */
export const TAPE_OUTLINE: readonly Corner[] = [
  [-HALF, FRONT],
  [HALF, FRONT],
  [HALF, BACK],
  [EDGE, BACK],
  [EDGE, END],
  [-EDGE, END],
  [-EDGE, BACK],
  [-HALF, BACK],
];

/** The same where a mark lies, turned to its heading; metres. */
export function tapeAt(at: Corner, headingDegrees: number): readonly Spot[] {
  const radians = (headingDegrees * Math.PI) / 180;
  const [sin, cos] = [Math.sin(radians), Math.cos(radians)];
  return TAPE_OUTLINE.map(([x, z]): Spot => [at[0] + x * cos - z * sin, at[1] + x * sin + z * cos]);
}

/** Which way somebody faces at a mark, degrees: the mark's heading, or to whom or what they turn there. */
export const headingAt = (plan: Plan, performer: Performer, mark: Mark): number =>
  (mark.faces ? whereabouts(performer, plan, secondsOfBeat(plan, mark.beat))?.headingDegrees : undefined) ??
  mark.headingDegrees;
