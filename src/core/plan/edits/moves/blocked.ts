import type { Mark, Performer } from '../../schema/cast';
import type { Spot } from '../../schema/numbers';
import type { Plan } from '../../schema/plan';
import { addMarkAt } from '../addMarkAt';
import { changeMark, type MarkPatch, removeMark } from '../changeMark';
import { moveMark } from '../moveMark';
import { momentsOf } from '../timedMarks';

/** The performer of that id. */
export const performerIn = (plan: Plan, id: string): Performer | null =>
  plan.cast.find((performer) => performer.id === id) ?? null;

/** The mark that a performer has at a beat; null for none. */
export const ownMark = (performer: Performer, beatId: string): Mark | null =>
  performer.marks.find(({ beat }) => beat === beatId) ?? null;

/**
 * Has a performer stand at a place at a beat, on the floor that is there: their mark of that beat comes there, or there
 * is a new one; its other fields are those of the patch.
 */
export function standAt(
  plan: Plan,
  args: {
    readonly performerId: string;
    readonly beatId: string;
    readonly at: Spot;
    readonly patch: Omit<MarkPatch, 'at' | 'beat'>;
  },
): Plan {
  const { performerId, beatId, at, patch } = args;
  const performer = performerIn(plan, performerId);
  if (!performer) return plan;
  const mark = ownMark(performer, beatId);
  if (!mark) return addMarkAt(plan, { performerId, beatId, at, ...patch });
  const moved = moveMark(plan, { performerId, markId: mark.id, to: at });
  return changeMark(moved, { performerId, markId: mark.id, patch });
}

/** Takes out a performer's marks between two beats, so that they go from one to the other in one walk. */
export function clearBetween(
  plan: Plan,
  {
    performerId,
    fromBeat,
    toBeat,
  }: { readonly performerId: string; readonly fromBeat: string; readonly toBeat: string },
): Plan {
  const momentOf = momentsOf(plan);
  const between = (performerIn(plan, performerId)?.marks ?? []).filter(
    ({ beat }) => momentOf(beat) > momentOf(fromBeat) && momentOf(beat) < momentOf(toBeat),
  );
  return between.reduce((left, { id }) => removeMark(left, { performerId, markId: id }), plan);
}
