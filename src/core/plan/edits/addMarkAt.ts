import * as v from 'valibot';
import { type Mark, mark as markSchema } from '../schema/cast';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { surfaceUnder } from '../surfaces';
import { changedPerformer, withoutFaults } from './changeMark';
import { freeId } from './freeId';
import { tidySpot } from './tidy';
import { momentsOf } from './timedMarks';

/**
 * Puts a mark at a beat, [x, z], metres: on the floor that is there, standing, with the heading of the mark before it,
 * unless it is said otherwise. It comes among the performer's marks in the order of time, after those of the same beat.
 * The same plan for a beat or somebody that there is not, and for a performer with 200 marks.
 */
export function addMarkAt(
  plan: Plan,
  args: { readonly performerId: string; readonly beatId: string; readonly at: Spot } & {
    readonly [Field in Exclude<keyof Mark, 'id' | 'beat' | 'at'>]?: Mark[Field] | undefined;
  },
): Plan {
  const { performerId, beatId, at: wanted, ...fields } = args;
  const momentOf = momentsOf(plan);
  const at = tidySpot(wanted);
  const floorMetres = surfaceUnder(plan, at).metres;
  const next = changedPerformer(plan, performerId, (performer) => {
    const place = performer.marks.findLastIndex(({ beat }) => momentOf(beat) <= momentOf(beatId)) + 1;
    const before = performer.marks[place - 1];
    const entries = Object.entries({
      id: freeId(performer.marks, 'mark'),
      beat: beatId,
      at,
      ...(floorMetres !== 0 && { floorMetres }),
      headingDegrees: before?.headingDegrees ?? 0,
      stance: 'stand',
      holdSeconds: 0,
      ...fields,
    });
    const mark: unknown = Object.fromEntries(entries.filter(([, value]) => value !== undefined));
    return v.is(markSchema, mark)
      ? { ...performer, marks: performer.marks.toSpliced(place, 0, mark) }
      : performer;
  });
  return withoutFaults(plan, next);
}
