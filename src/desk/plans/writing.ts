import type { Plan } from '../../core/plan/schema/plan';
import { sameData } from '../../core/units/sameData';
import { onNotes, onShelf } from '../shelf';
import { rowOf, TAB } from './rows';
import type { LeftPlan, PlanRow } from './shelfTypes';

/** A plan with what it is kept under. */
export interface Keepable {
  readonly planId: string;
  readonly plan: Plan;
  readonly fileName: string;
}

/** A state of a plan that is to be written. */
export interface OpenPlan extends Keepable {
  /** When this state was made, milliseconds since 1970: `nextInstant`. */
  readonly changedAt: number;
}

/** A plan as it was found on the shelf. */
export interface FoundPlan {
  readonly row: PlanRow;
  /** As it was stored: whatever it is, it is parsed before it is believed. */
  readonly document: unknown;
}

/** The last writing of each plan that this page took up or made. */
const known = new Map<string, number>();

/** Says that this page goes on from that writing of a plan. */
export const takeUpFrom = ({ id, writing }: PlanRow): void => void known.set(id, writing);

/** Whether that writing of a plan is another tab's. */
export const isNews = (planId: string, writing: number): boolean => writing > (known.get(planId) ?? 0);

const WITH_META = ['plans', 'documents', 'meta'] as ['plans', 'documents', 'meta'];
const PLAN = ['plans', 'documents'] as ['plans', 'documents'];

/** When what the last note of each plan says was made. */
const noted = new Map<string, number>();

const noteKey = (planId: string): string => `${planId} ${TAB}`;

/**
 * Puts a note of a plan down beside the kept one, without waiting for any answer: a page that goes away gets none. No
 * writing stands in its way, and the next one that is as new takes it away.
 */
export function leavePlan({ planId, plan, fileName, changedAt }: OpenPlan): Promise<void> {
  const writing = known.get(planId) ?? 0;
  noted.set(planId, changedAt);
  const left: LeftPlan = { planId, document: plan, fileName, writing, changedAt, tab: TAB };
  return onNotes((store) => store.put(left, noteKey(planId)));
}

async function dropNote({ planId, changedAt }: OpenPlan): Promise<void> {
  const at = noted.get(planId);
  if (at === undefined || at > changedAt) return;
  noted.delete(planId);
  await onNotes((store) => store.delete(noteKey(planId)));
}

/**
 * Writes a plan unless another tab has written it since, in one transaction, so that nobody writes in between.
 * Null when it was not written: what the other tab wrote says something else. A plan that was taken off the shelf
 * elsewhere comes back.
 * @returns the row as it is now
 * @throws what the browser throws when it refuses storage
 */
export async function writePlan(open: OpenPlan): Promise<PlanRow | null> {
  const { planId, plan, fileName, changedAt } = open;
  const row = await onShelf(WITH_META, 'readwrite', async (transaction) => {
    const plans = transaction.objectStore('plans');
    const documents = transaction.objectStore('documents');
    const before = await plans.get(planId);
    const ours = known.get(planId) ?? 0;
    // A page that opened meanwhile may have taken up a note of this very tab.
    if (before && before.writing !== ours && before.tab !== TAB) {
      return sameData(await documents.get(planId), plan) ? before : null;
    }
    const writing = (before?.writing ?? ours) + 1;
    const next = rowOf({ id: planId, fileName, writing, changedAt }, plan);
    await Promise.all([
      documents.put(plan, planId),
      plans.put(next, planId),
      transaction.objectStore('meta').put(planId, 'lastOpen'),
    ]);
    return next;
  });
  if (!row) return null;
  takeUpFrom(row);
  await dropNote(open);
  return row;
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
