import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Plan } from '../core/plan/schema/plan';

/** A plan as this device holds it. */
export interface KeptPlan {
  /** As it was stored: whatever it is, it is parsed before it is believed. */
  readonly document: unknown;
  readonly fileName: string;
  /** Counts the writings: a number that a page does not know is another tab's. */
  readonly writing?: number;
}

/** What a page has to be kept. */
export interface OpenPlan {
  readonly plan: Plan;
  readonly fileName: string;
}

interface Shelf extends DBSchema {
  plans: { key: string; value: KeptPlan };
}

const CURRENT = 'current';
/** What a page put down on its way out, when it had no time to see what another tab had written. */
const LEAVING = 'leaving';
/** Where a kept plan goes that could not be read, so that the next edit does not write over it. */
const UNREAD = 'unread';

let shelf: Promise<IDBPDatabase<Shelf>> | null = null;
/** The last writing that this page read or made. */
let knownWriting = 0;

function openShelf(): Promise<IDBPDatabase<Shelf>> {
  shelf ??= openDB<Shelf>('standclear', 1, {
    upgrade: (database) => {
      database.createObjectStore('plans');
    },
  });
  return shelf;
}

const writingOf = (kept: KeptPlan | undefined): number => kept?.writing ?? 0;

/**
 * Reads what is kept: `current`, and `left` where a page that went away put down changes of its own while another tab
 * had written since; each null when there is none. What was left after the last writing is the current plan.
 * @throws what the browser throws when it refuses storage
 */
export async function readShelf(): Promise<{
  readonly current: KeptPlan | null;
  readonly left: KeptPlan | null;
}> {
  const transaction = (await openShelf()).transaction('plans', 'readwrite');
  const { store } = transaction;
  const [kept, left] = await Promise.all([store.get(CURRENT), store.get(LEAVING)]);
  knownWriting = writingOf(kept);
  const isNewest = left !== undefined && writingOf(left) === knownWriting;
  if (left) await store.delete(LEAVING);
  if (isNewest) {
    knownWriting += 1;
    await store.put({ ...left, writing: knownWriting }, CURRENT);
  }
  await transaction.done;
  return isNewest ? { current: left, left: null } : { current: kept ?? null, left: left ?? null };
}

/**
 * Writes the plan unless another tab has written since, and says whether it did; in one transaction, so that no tab
 * writes in between. Over `any` writing it writes in any case.
 * @throws what the browser throws when it refuses storage
 */
export async function writeShelf({ plan, fileName }: OpenPlan, over: 'own' | 'any'): Promise<boolean> {
  const transaction = (await openShelf()).transaction('plans', 'readwrite');
  const { store } = transaction;
  const writing = writingOf(await store.get(CURRENT));
  const isOurs = writing === knownWriting || over === 'any';
  if (isOurs) {
    await store.put({ document: plan, fileName, writing: writing + 1 }, CURRENT);
    await store.delete(LEAVING);
  }
  await transaction.done;
  if (isOurs) knownWriting = writing + 1;
  return isOurs;
}

/** Puts the plan down beside the kept one, without waiting for any answer: a page that goes away gets none. */
export async function leaveOnShelf({ plan, fileName }: OpenPlan): Promise<void> {
  const transaction = (await openShelf()).transaction('plans', 'readwrite');
  const put = transaction.store.put({ document: plan, fileName, writing: knownWriting }, LEAVING);
  // Told to: a transaction that waits for its page to be done with it is dropped with the page.
  transaction.commit();
  await Promise.all([put, transaction.done]);
}

/** Puts aside what could not be read. */
export async function putAside(kept: KeptPlan): Promise<void> {
  await (await openShelf()).put('plans', kept, UNREAD);
}
