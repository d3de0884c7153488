import { standReach } from '../../plan/edits/setStandHeight';
import { tidyHeading, tidyMetres } from '../../plan/edits/tidy';
import type { Plan } from '../../plan/schema/plan';
import type { RemedyEdit } from '../remedies/remedyEdits';
import { DEGREES_A_METRE } from '../remedies/types';
import { degreesWords, lengthWords } from '../remedies/words';
import type { Mover } from './movers';

/** Another shape of a thing on its place: as it is, lower or higher, its arm swung, or turned. */
export interface Shape {
  readonly edits: readonly RemedyEdit[];
  readonly metres: number;
  readonly degrees: number;
  /** As: `0.5 m lower`; empty as it is. */
  readonly words: string;
}

/** A number of a thing that may be changed, and the shape that each change makes. */
export interface Reshaping {
  readonly lowest: number;
  readonly highest: number;
  /** How far apart changes of it are tried together with moves. */
  readonly step: number;
  readonly fine: number;
  readonly shapeOf: (by: number) => Shape;
}

const AS_IT_IS: Shape = { edits: [], metres: 0, degrees: 0, words: '' };

const ARM_DEGREES = 30;
const TURN_DEGREES = 45;

/** How far a shape is from what is there, in metres. */
export const shapeChange = ({ metres, degrees }: Shape): number => metres + degrees / DEGREES_A_METRE;

/** All that may be changed of a thing on its place, by steps of so many metres where it is a height. */
export function reshapingsOf(plan: Plan, { id }: Mover, heightStepMetres: number): readonly Reshaping[] {
  const record = [...plan.pieces, ...plan.gear].find((each) => each.id === id);
  if (!record) return [];
  if (record.kind !== 'stand') {
    if (!('headingDegrees' in record)) return [];
    const { headingDegrees } = record;
    const shapeOf = (by: number): Shape => ({
      edits: [{ edit: 'turnItem', args: { id, headingDegrees: tidyHeading(headingDegrees + by) } }],
      metres: 0,
      degrees: Math.abs(by),
      words: `turned ${degreesWords(Math.abs(by))} ${by > 0 ? 'clockwise' : 'anticlockwise'}`,
    });
    return [{ lowest: -180, highest: 180, step: TURN_DEGREES, fine: 0.2, shapeOf }];
  }
  const { heightMetres, arm } = record;
  const found: Reshaping[] = [];
  const reach = standReach(plan, id);
  if (reach)
    found.push({
      lowest: Math.min(0, reach.lowestMetres - heightMetres),
      highest: Math.max(0, reach.highestMetres - heightMetres),
      step: heightStepMetres,
      fine: 0.005,
      shapeOf: (by) => ({
        edits: [{ edit: 'setStandHeight', args: { id, heightMetres: tidyMetres(heightMetres + by) } }],
        metres: Math.abs(by),
        degrees: 0,
        words: `${lengthWords(Math.abs(by))} ${by < 0 ? 'lower' : 'higher'}`,
      }),
    });
  if (arm)
    found.push({
      lowest: -180,
      highest: 180,
      step: ARM_DEGREES,
      fine: 0.2,
      shapeOf: (by) => ({
        edits: [
          {
            edit: 'setArm',
            args: { id, arm: { ...arm, headingDegrees: tidyHeading(arm.headingDegrees + by) } },
          },
        ],
        metres: 0,
        degrees: Math.abs(by),
        words: `its arm swung ${degreesWords(Math.abs(by))} ${by > 0 ? 'clockwise' : 'anticlockwise'}`,
      }),
    });
  return found;
}

/** As it is, and every step of what may be changed, the least change first. */
export function shapesOf(reshapings: readonly Reshaping[]): readonly Shape[] {
  const stepped = reshapings.flatMap(({ lowest, highest, step, fine, shapeOf }) => {
    const changes: Shape[] = [];
    for (const [sign, most] of [
      [-1, -lowest],
      [1, highest],
    ]) {
      for (let by = step; by < most - 1e-9; by += step) changes.push(shapeOf(sign * by));
      if (most > fine) changes.push(shapeOf(sign * most));
    }
    return changes;
  });
  return [AS_IT_IS, ...stepped].sort((a, b) => shapeChange(a) - shapeChange(b));
}
