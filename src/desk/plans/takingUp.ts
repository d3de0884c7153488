import { parsePlan } from '../../core/plan/parse';
import { sameData } from '../../core/units/sameData';
import { onShelf } from '../shelf';
import { newPlanId } from './planId';
import { rowOf } from './rows';
import type { LeftPlan, PlanRow } from './shelfTypes';
import { titleWith } from './titles';

const WITH_NOTES = ['plans', 'documents', 'left'] as ['plans', 'documents', 'left'];

/** Whether a note says what came after the kept state: by its tab's clock, or by the writing that it knew. */
const isAfter = (note: LeftPlan, row: PlanRow | undefined): boolean => {
  if (!row) return true;
  return note.tab === row.tab ? note.changedAt > row.changedAt : note.writing === row.writing;
};

/** Whether the kept state is the note's, or came after it in the same tab. */
const isPast = (note: LeftPlan, row: PlanRow | undefined, document: unknown): boolean =>
  row !== undefined &&
  ((note.tab === row.tab && note.changedAt <= row.changedAt) || sameData(document, note.document));

/**
 * Takes up what pages put down and did not come to write. After the last writing it is the plan itself; where another
 * tab has written since, it becomes a plan of its own, and its row comes back.
 */
export function takeUpLeft(): Promise<readonly PlanRow[]> {
  return onShelf(WITH_NOTES, 'readwrite', async (transaction) => {
    const plans = transaction.objectStore('plans');
    const documents = transaction.objectStore('documents');
    const aside: PlanRow[] = [];
    const notes = await transaction.objectStore('left').getAll();
    for (const note of notes.sort((one, other) => one.changedAt - other.changedAt)) {
      const { planId, document, fileName, changedAt, tab } = note;
      const before = await plans.get(planId);
      if (isPast(note, before, await documents.get(planId))) continue;
      if (isAfter(note, before)) {
        const writing = (before?.writing ?? 0) + 1;
        await documents.put(document, planId);
        await plans.put(rowOf({ id: planId, fileName, writing, changedAt, tab }, document), planId);
        continue;
      }
      const row = rowOf({ id: newPlanId(), fileName, writing: 1, changedAt, tab }, document);
      const title = titleWith(row.title, 'from a closed tab');
      // A title is part of the plan, where it is one.
      const read = parsePlan(document);
      await documents.put(read.ok ? { ...read.value, title } : document, row.id);
      await plans.put({ ...row, title }, row.id);
      aside.push({ ...row, title });
    }
    await transaction.objectStore('left').clear();
    return aside;
  });
}
