import { editRecord } from '../../../core/plan/edits/editRecord';
import { freeId } from '../../../core/plan/edits/freeId';
import type { Mark, Performer } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';

const changed = (plan: Plan, id: string, change: (performer: Performer) => Performer): Plan =>
  editRecord(plan, id, { cast: change });

/** Takes fields of one mark of a performer to other values. */
export function changeMark(
  plan: Plan,
  {
    performerId,
    markId,
    patch,
  }: { readonly performerId: string; readonly markId: string; readonly patch: Partial<Mark> },
): Plan {
  return changed(plan, performerId, (performer) => {
    const index = performer.marks.findIndex(({ id }) => id === markId);
    const mark = performer.marks[index];
    return mark ? { ...performer, marks: performer.marks.with(index, { ...mark, ...patch }) } : performer;
  });
}

/** Takes a mark out; the performer goes on from the one before it to the one after. */
export function removeMark(
  plan: Plan,
  { performerId, markId }: { readonly performerId: string; readonly markId: string },
): Plan {
  return changed(plan, performerId, (performer) => ({
    ...performer,
    marks: performer.marks.filter(({ id }) => id !== markId),
  }));
}

/** How far from the last mark a new one lies, so that both can be taken hold of. Source: common practice, no source */
const APART_METRES = 1;

/** Adds a mark at the beat after the last one's, a metre to the right of it; at the middle of the roof where it is the first. */
export function addMark(plan: Plan, { performerId }: { readonly performerId: string }): Plan {
  const beats = plan.beats.toSorted((a, b) => a.atSeconds - b.atSeconds);
  return changed(plan, performerId, (performer) => {
    const last = performer.marks.at(-1);
    const place = beats.findIndex(({ id }) => id === last?.beat);
    const beat = beats[place + 1] ?? beats.at(-1);
    if (!beat) return performer;
    const mark: Mark = {
      stance: 'stand',
      holdSeconds: 0,
      headingDegrees: 0,
      ...last,
      at: last ? [last.at[0] + APART_METRES, last.at[1]] : [0, 0],
      id: freeId(performer.marks, 'mark'),
      beat: beat.id,
    };
    return { ...performer, marks: [...performer.marks, mark] };
  });
}
