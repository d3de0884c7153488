import { parsePlan } from '../../core/plan/parse';
import type { Plan } from '../../core/plan/schema/plan';
import { onShelf } from '../shelf';
import { newPlanId } from './planId';
import { rowOf } from './rows';
import { sameData } from './same';
import type { LeftPlan, PlanRow } from './shelfTypes';
import { titleWith } from './titles';

/** A plan with what it is kept under. */
export interface OpenPlan {
  readonly planId: string;
  readonly plan: Plan;
  readonly fileName: string;
}

/** A plan as it was found on the shelf. */
export interface FoundPlan {
  readonly row: PlanRow;
  /** As it was stored: whatever it is, it is parsed before it is believed. */
  readonly document: unknown;
}

/** Tells this page's notes from those of other pages. */
const TAB = newPlanId();

/** The last writing of each plan that this page took up or made. */
const known = new Map<string, number>();

/** Says that this page goes on from that writing of a plan. */
export const takeUpFrom = ({ id, writing }: PlanRow): void => void known.set(id, writing);

/** Whether that writing of a plan is another tab's. */
export const isNews = (planId: string, writing: number): boolean => writing > (known.get(planId) ?? 0);

const WITH_NOTES = ['plans', 'documents', 'left', 'meta'] as ['plans', 'documents', 'left', 'meta'];
const PLAN = ['plans', 'documents'] as ['plans', 'documents'];

const noteKey = (planId: string): string => `${planId} ${TAB}`;

/**
 * Writes a plan unless another tab has written it since, in one transaction, so that nobody writes in between.
 * Null when it was not written: what the other tab wrote says something else. A plan that was taken off the shelf
 * elsewhere comes back.
 * @returns the row as it is now
 * @throws what the browser throws when it refuses storage
 */
export function writePlan({ planId, plan, fileName }: OpenPlan): Promise<PlanRow | null> {
  return onShelf(WITH_NOTES, 'readwrite', async (transaction) => {
    const plans = transaction.objectStore('plans');
    const documents = transaction.objectStore('documents');
    const before = await plans.get(planId);
    const ours = known.get(planId) ?? 0;
    if (before && before.writing !== ours) {
      if (!sameData(await documents.get(planId), plan)) return null;
      known.set(planId, before.writing);
      await transaction.objectStore('left').delete(noteKey(planId));
      return before;
    }
    const row = rowOf(planId, plan, fileName, ours + 1);
    await Promise.all([
      documents.put(plan, planId),
      plans.put(row, planId),
      transaction.objectStore('left').delete(noteKey(planId)),
      transaction.objectStore('meta').put(planId, 'lastOpen'),
    ]);
    known.set(planId, row.writing);
    return row;
  });
}

/** Puts a plan down beside the kept one, without waiting for any answer: a page that goes away gets none. */
export function leavePlan({ planId, plan, fileName }: OpenPlan): Promise<void> {
  return onShelf(['left'], 'readwrite', async (transaction) => {
    const writing = known.get(planId) ?? 0;
    const left: LeftPlan = { planId, document: plan, fileName, writing, at: Date.now() };
    const put = transaction.store.put(left, noteKey(planId));
    // Told to: a transaction that waits for its page to be done with it is dropped with the page.
    transaction.commit();
    await put;
  });
}

/**
 * Takes up what pages put down on their way out. After the last writing it is the plan itself; where another tab has
 * written since, it becomes a plan of its own, and its row comes back.
 */
export function takeUpLeft(): Promise<readonly PlanRow[]> {
  return onShelf(WITH_NOTES, 'readwrite', async (transaction) => {
    const plans = transaction.objectStore('plans');
    const documents = transaction.objectStore('documents');
    const aside: PlanRow[] = [];
    const notes = await transaction.objectStore('left').getAll();
    for (const { planId, document, fileName, writing } of notes.sort((one, other) => one.at - other.at)) {
      const row = await plans.get(planId);
      if (row && sameData(await documents.get(planId), document)) continue;
      const isNewest = (row?.writing ?? 0) === writing;
      const next = rowOf(isNewest ? planId : newPlanId(), document, fileName, isNewest ? writing + 1 : 1);
      const title = isNewest ? next.title : titleWith(next.title, 'from a closed tab');
      // A title is part of the plan, where it is one.
      const read = isNewest ? null : parsePlan(document);
      await documents.put(read?.ok ? { ...read.value, title } : document, next.id);
      await plans.put({ ...next, title }, next.id);
      if (!isNewest) aside.push({ ...next, title });
    }
    await transaction.objectStore('left').clear();
    return aside;
  });
}

/** What the shelf holds of a plan, or null. */
export function findPlan(planId: string): Promise<FoundPlan | null> {
  return onShelf(PLAN, 'readonly', async (transaction) => {
    const [row, document] = await Promise.all([
      transaction.objectStore('plans').get(planId),
      transaction.objectStore('documents').get(planId),
    ]);
    return row ? { row, document } : null;
  });
}

/** The rows of all kept plans, the one changed last first. */
export async function planRows(): Promise<PlanRow[]> {
  const rows = await onShelf(['plans'], 'readonly', (transaction) => transaction.store.getAll());
  return rows.sort((one, other) => other.changedAt - one.changedAt);
}

/** Marks a plan as taken out of the list, or not. */
export function markTakenOut(planId: string, takenOut: boolean): Promise<void> {
  return onShelf(['plans'], 'readwrite', async ({ store }) => {
    const row = await store.get(planId);
    if (row) await store.put({ ...row, takenOut }, planId);
  });
}

const ALL = ['plans', 'documents', 'left', 'versions', 'pictures', 'handles'] as [
  'plans',
  'documents',
  'left',
  'versions',
  'pictures',
  'handles',
];

/** Takes plans off the shelf for good, with all that belongs to them, as far as they are still marked as taken out. */
export function dropTakenOut(planIds: readonly string[]): Promise<readonly string[]> {
  return onShelf(ALL, 'readwrite', async (transaction) => {
    const dropped: string[] = [];
    for (const planId of planIds) {
      const row = await transaction.objectStore('plans').get(planId);
      if (!row?.takenOut) continue;
      dropped.push(planId);
      known.delete(planId);
      await Promise.all([
        transaction.objectStore('plans').delete(planId),
        transaction.objectStore('documents').delete(planId),
        transaction.objectStore('versions').delete(IDBKeyRange.bound([planId], [planId, []])),
        transaction.objectStore('pictures').delete(planId),
        transaction.objectStore('handles').delete(planId),
      ]);
    }
    return dropped;
  });
}
