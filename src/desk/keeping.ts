import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { parsePlan } from '../core/plan/parse';
import type { Plan } from '../core/plan/schema/plan';
import { keepingStore } from './keepingStore';
import { planStore } from './planStore';
import { toastStore } from './toastStore';

interface KeptPlan {
  /** As it was stored: whatever it is, it is parsed before it is believed. */
  readonly document: unknown;
  readonly fileName: string;
}

interface Shelf extends DBSchema {
  plans: { key: string; value: KeptPlan };
}

const CURRENT = 'current';
/** Where a kept plan goes that could not be read, so that the next edit does not write over it. */
const UNREAD = 'unread';
/** Long enough for a run of nudges to be one write, short enough that a closed lid loses nothing. */
const PAUSE_MS = 400;

let shelf: Promise<IDBPDatabase<Shelf>> | null = null;

function openShelf(): Promise<IDBPDatabase<Shelf>> {
  shelf ??= openDB<Shelf>('standclear', 1, {
    upgrade: (database) => {
      database.createObjectStore('plans');
    },
  });
  return shelf;
}

/** Private windows, full disks and blocked storage all end here: said in the header, and the work goes on. */
const refuse = (): void => keepingStore.setState({ state: 'refused' });

async function keep(): Promise<void> {
  const { plan, fileName } = planStore.getState();
  try {
    await (await openShelf()).put('plans', { document: plan, fileName }, CURRENT);
    keepingStore.setState({ state: 'kept' });
  } catch {
    refuse();
  }
}

/** The plan that this device kept, or null when there is none that can be read. */
export async function restoreKept(): Promise<{ readonly plan: Plan; readonly fileName: string } | null> {
  try {
    const database = await openShelf();
    const kept = await database.get('plans', CURRENT);
    keepingStore.setState({ state: 'kept' });
    if (!kept) return null;
    const read = parsePlan(kept.document);
    if (read.ok) return { plan: read.value, fileName: kept.fileName };
    await database.put('plans', kept, UNREAD);
    toastStore
      .getState()
      .say(`The plan kept on this device cannot be read. ${read.faults[0]?.sentence ?? ''}`, {
        tone: 'warn',
      });
    return null;
  } catch {
    refuse();
    return null;
  }
}

/** Keeps the plan on this device within a second of every edit, and at once when the page is put away. */
export function startKeeping(): void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  const keepNow = (): void => {
    if (timer === null) return;
    clearTimeout(timer);
    timer = null;
    void keep();
  };
  planStore.subscribe((state, before) => {
    if (!state.opened || (state.plan === before.plan && state.fileName === before.fileName)) return;
    timer ??= setTimeout(keepNow, PAUSE_MS);
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') keepNow();
  });
}
