import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import { newPlanId } from './planId';
import { rowOf } from './rows';
import type { PlanRow, Shelf } from './shelfTypes';
import { titleWith } from './titles';

/** A plan as version 1 of the shelf held it. */
interface KeptAlone {
  readonly document: unknown;
  readonly fileName: string;
  readonly writing?: number;
}

/** Version 1 held one plan under `current`, and beside it what a page had left and what could not be read. */
const ALONE = ['current', 'leaving', 'unread'] as const;

type Upgrading = IDBPTransaction<Shelf, StoreNames<Shelf>[], 'versionchange'>;

function isKeptAlone(value: unknown): value is KeptAlone {
  return value !== null && typeof value === 'object' && 'document' in value;
}

/** The plans of version 1, as rows and documents, the one that was open first. */
function fromAlone(
  found: readonly (KeptAlone | null)[],
): { readonly row: PlanRow; readonly document: unknown }[] {
  const [current, leaving, unread] = found;
  // What was left after the last writing is the plan itself.
  const isNewest = leaving !== null && (leaving?.writing ?? 0) === (current?.writing ?? 0);
  const kept = isNewest ? leaving : current;
  const beside = isNewest ? null : leaving;
  return [kept, beside, unread].flatMap((plan) => {
    if (!plan) return [];
    const row = rowOf(
      { id: newPlanId(), fileName: plan.fileName, writing: plan.writing ?? 1 },
      plan.document,
    );
    const title = plan === beside ? titleWith(row.title, 'from a closed tab') : row.title;
    return [{ row: { ...row, title }, document: plan.document }];
  });
}

/** Brings the shelf of an earlier version to this one, in the one transaction that the browser gives for it. */
export async function upgradeShelf(
  database: IDBPDatabase<Shelf>,
  from: number,
  transaction: Upgrading,
): Promise<void> {
  const found: (KeptAlone | null)[] = [];
  if (from === 1) {
    for (const key of ALONE) {
      const value: unknown = await transaction.objectStore('plans').get(key);
      found.push(isKeptAlone(value) ? value : null);
    }
    database.deleteObjectStore('plans');
  }
  for (const name of ['plans', 'documents', 'left', 'versions', 'pictures', 'handles', 'meta'] as const) {
    database.createObjectStore(name);
  }
  for (const [place, { row, document }] of fromAlone(found).entries()) {
    await transaction.objectStore('plans').put(row, row.id);
    await transaction.objectStore('documents').put(document, row.id);
    if (place === 0) await transaction.objectStore('meta').put(row.id, 'lastOpen');
  }
}
