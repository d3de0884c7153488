import {
  type IDBPDatabase,
  type IDBPObjectStore,
  type IDBPTransaction,
  openDB,
  type StoreNames,
  type StoreValue,
} from 'idb';
import type { Shelf } from './plans/shelfTypes';
import { upgradeShelf } from './plans/upgrade';

/** Raised where a page of an older Standclear holds the shelf as it was. */
export class ShelfHeld extends Error {
  constructor() {
    super('another tab holds the plans of this device with an older Standclear');
    this.name = 'ShelfHeld';
  }
}

const NAME = 'standclear';
const VERSION = 2;

let shelf: Promise<IDBPDatabase<Shelf>> | null = null;

/** Lets the shelf go, so that whoever asks next opens it anew. */
export function closeShelf(): void {
  shelf?.then((database) => database.close()).catch(() => {});
  shelf = null;
}

function openShelf(): Promise<IDBPDatabase<Shelf>> {
  if (shelf) return shelf;
  const opening = new Promise<IDBPDatabase<Shelf>>((resolve, reject) => {
    openDB<Shelf>(NAME, VERSION, {
      upgrade: (database, from, _to, transaction) => upgradeShelf(database, from, transaction),
      blocked: () => reject(new ShelfHeld()),
      // A newer page wants the shelf: this one goes on without it, and says so.
      blocking: closeShelf,
      terminated: closeShelf,
    }).then(resolve, reject);
  });
  shelf = opening;
  opening.catch(() => {
    if (shelf === opening) shelf = null;
  });
  return opening;
}

/**
 * Works on the shelf in one transaction: all of it is done, or nothing. A writing is on the disk when the promise is
 * fulfilled, not only with the system: a battery may fail as well as a tab.
 * @throws what the browser throws when it refuses storage, `ShelfHeld` where an older page is in the way
 */
export async function onShelf<const Names extends StoreNames<Shelf>[], Result>(
  names: Names,
  mode: 'readonly' | 'readwrite',
  work: (transaction: IDBPTransaction<Shelf, Names, 'readwrite'>) => Promise<Result>,
): Promise<Result> {
  const database = await openShelf();
  const transaction = database.transaction(names, mode as 'readwrite', { durability: 'strict' });
  const working = work(transaction).catch((error: unknown) => {
    try {
      transaction.abort();
    } catch {
      // It has ended by itself, as it does when a request fails.
    }
    throw error;
  });
  const [result] = await Promise.all([working, transaction.done]);
  return result;
}

/**
 * Does one thing to the notes that pages leave, without waiting for any answer on the way: once it is asked for it is
 * done, even if the page is gone the next moment. It is with the system then, and on the disk a little later.
 * @throws what the browser throws when it refuses storage
 */
export async function onNotes(
  work: (store: IDBPObjectStore<Shelf, ['left'], 'left', 'readwrite'>) => Promise<unknown>,
): Promise<void> {
  const transaction = (await openShelf()).transaction('left', 'readwrite', { durability: 'relaxed' });
  const working = work(transaction.store);
  // Told to: a transaction that waits for its page to be done with it is dropped with the page.
  transaction.commit();
  await Promise.all([working, transaction.done]);
}

/** One value of the shelf, or null. */
export async function shelved<Name extends StoreNames<Shelf>>(
  name: Name,
  key: Shelf[Name]['key'],
): Promise<StoreValue<Shelf, Name> | null> {
  return (await (await openShelf()).get(name, key)) ?? null;
}
