import { parsePlan } from '../core/plan/parse';
import { keepingStore } from './keepingStore';
import { planStore } from './planStore';
import { type KeptPlan, leaveOnShelf, type OpenPlan, putAside, readShelf, writeShelf } from './shelf';
import { toastStore } from './toastStore';

/** Long enough for a run of nudges to be one write, short enough that a closed lid loses nothing. */
const PAUSE_MS = 400;

/** Private windows, full disks and blocked storage all end here: said in the header, and the work goes on. */
const refuse = (): void => keepingStore.setState({ state: 'refused' });

async function keep(over: 'own' | 'any' = 'own'): Promise<void> {
  const open = planStore.getState();
  try {
    if (await writeShelf(open, over)) keepingStore.setState({ state: 'kept', safePlan: open.plan });
    else standBack();
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

/** Offers what a closed tab held when another tab had kept a plan since. */
function offerLeft(left: KeptPlan): void {
  const read = parsePlan(left.document);
  if (!read.ok) return;
  toastStore.getState().say('A tab that was closed held another state of the plan.', {
    tone: 'warn',
    about: 'keeping',
    action: { word: 'Open it', act: () => planStore.getState().openPlan(read.value, left.fileName) },
  });
}

/** The plan that this device kept, or null when there is none that can be read. */
export async function restoreKept(): Promise<OpenPlan | null> {
  try {
    const { current, left } = await readShelf();
    keepingStore.setState({ state: 'kept' });
    if (left) offerLeft(left);
    if (!current) return null;
    const read = parsePlan(current.document);
    if (read.ok) return { plan: read.value, fileName: current.fileName };
    await putAside(current);
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
    if (document.visibilityState !== 'hidden' || isSafe()) return;
    leaveOnShelf(planStore.getState()).catch(refuse);
    keepNow();
  });
  window.addEventListener('beforeunload', (event) => {
    const { state } = keepingStore.getState();
    // The browser asks in its own words whether to leave.
    if ((state === 'refused' || state === 'elsewhere') && !isSafe()) event.preventDefault();
  });
}

/** Whether all of the plan would outlive the page. */
function isSafe(): boolean {
  const { plan, opened } = planStore.getState();
  return !opened || plan === keepingStore.getState().safePlan;
}
