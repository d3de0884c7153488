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
  /** Counts the writings: a number that this page does not know is another tab's. */
  readonly writing?: number;
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

/** Private windows, full disks and blocked storage all end here: said in the header, and the work goes on. */
const refuse = (): void => keepingStore.setState({ state: 'refused' });

const writingOf = (kept: KeptPlan | undefined): number => kept?.writing ?? 0;

/** Writes the plan unless another tab has written since; in one transaction, so that no tab writes in between. */
async function write(over: 'own' | 'any'): Promise<boolean> {
  const { plan, fileName } = planStore.getState();
  const transaction = (await openShelf()).transaction('plans', 'readwrite');
  const writing = writingOf(await transaction.store.get(CURRENT));
  const isOurs = writing === knownWriting || over === 'any';
  if (isOurs) await transaction.store.put({ document: plan, fileName, writing: writing + 1 }, CURRENT);
  await transaction.done;
  if (!isOurs) return false;
  knownWriting = writing + 1;
  keepingStore.setState({ state: 'kept', safePlan: plan });
  return true;
}

async function keep(over: 'own' | 'any' = 'own'): Promise<void> {
  try {
    if (!(await write(over))) standBack();
  } catch {
    refuse();
  }
}

/** Two tabs of one device keep one plan: the later does not write over the other's work unless it is told to. */
function standBack(): void {
  if (keepingStore.getState().state === 'elsewhere') return;
  keepingStore.setState({ state: 'elsewhere' });
  toastStore
    .getState()
    .say('Another tab keeps its plan on this device, so this one is no longer kept. Save it to a file.', {
      tone: 'warn',
      about: 'keeping',
      action: { word: 'Keep this one', act: () => void keep('any') },
    });
}

/** The plan that this device kept, or null when there is none that can be read. */
export async function restoreKept(): Promise<{ readonly plan: Plan; readonly fileName: string } | null> {
  try {
    const database = await openShelf();
    const kept = await database.get('plans', CURRENT);
    knownWriting = writingOf(kept);
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
    if (!state.opened) return;
    // What the page starts with comes from the shelf or can be had again, and what is opened lies in its file.
    if (state.documentNumber > before.documentNumber) keepingStore.setState({ safePlan: state.plan });
    if (!before.opened || (state.plan === before.plan && state.fileName === before.fileName)) return;
    timer ??= setTimeout(keepNow, PAUSE_MS);
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') keepNow();
  });
  window.addEventListener('beforeunload', (event) => {
    const { state, safePlan } = keepingStore.getState();
    const isKeeping = state === 'kept' || state === 'starting';
    if (isKeeping || !planStore.getState().opened || planStore.getState().plan === safePlan) return;
    // The browser asks in its own words whether to leave.
    event.preventDefault();
  });
}
