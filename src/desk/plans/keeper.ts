import type { Plan } from '../../core/plan/schema/plan';
import { type KeepingState, keepingStore } from '../keepingStore';
import { ShelfHeld } from '../shelf';
import { nextInstant } from './rows';
import { tellTabs } from './tabs';
import { giveUpLesser } from './versionShelf';
import { type Keepable, leavePlan, type OpenPlan, writePlan } from './writing';

/** An edit is written at once, and those that follow it within this time together: a run of nudges is few writings. */
const PAUSE_MS = 300;
/** How soon a device that refused is asked again. */
const RETRY_MS = 3000;
/** A writing that takes longer is told. */
const SLOW_MS = 2500;

/** What differs from the shelf, by plan. */
const unwritten = new Map<string, OpenPlan>();
/** The plan as it was last written or read, by id. */
const written = new Map<string, Plan>();
/** What lies in a file as it is. */
const inFiles = new WeakSet<Plan>();

let meetOther: (open: OpenPlan) => void = () => {};
let timer: ReturnType<typeof setTimeout> | null = null;
let writing: Promise<void> | null = null;
let writtenAt = Number.NEGATIVE_INFINITY;

const QUOTA = 'QuotaExceededError';
const nameOf = (error: unknown): string =>
  error instanceof Error || error instanceof DOMException ? error.name : '';

/** Private windows, full disks and blocked storage all end here: said in the header, and the work goes on. */
export function tellRefusal(error: unknown): void {
  const name = nameOf(error);
  const states: Readonly<Record<string, KeepingState['state']>> = {
    [QUOTA]: 'full',
    VersionError: 'newer',
    [new ShelfHeld().name]: 'held',
  };
  keepingStore.setState({ state: states[name] ?? 'refused' });
}

/** Says what to do with a plan that another tab has written since. */
export function onOtherWriting(meet: (open: OpenPlan) => void): void {
  meetOther = meet;
}

/** Says that the shelf holds this state of a plan. */
export const isWritten = (planId: string, plan: Plan): void => void written.set(planId, plan);

/** Says that a file holds this state of a plan. */
export function isInFile(plan: Plan): void {
  inFiles.add(plan);
  tellSaved();
}

/** Whether there is something of that plan that the shelf does not have. */
export const isUnwritten = (planId: string): boolean => unwritten.has(planId);

/** Whether everything would outlive the page. */
export const isAllSafe = (): boolean => [...unwritten.values()].every(({ plan }) => inFiles.has(plan));

function tellSaved(): void {
  const saved = unwritten.size === 0 ? 'shelf' : isAllSafe() ? 'file' : 'nobody';
  if (keepingStore.getState().saved !== saved) keepingStore.setState({ saved });
}

/** What is wrong with the shelf, the writing that follows finds out and says. */
const leaveNote = (open: OpenPlan): void => void leavePlan(open).catch(() => {});

/** What no longer has to be written. */
export function forgetUnwritten(planId: string): void {
  unwritten.delete(planId);
  tellSaved();
}

/** Has a plan written soon. */
export function keep(keepable: Keepable): void {
  const open = { ...keepable, changedAt: nextInstant() };
  unwritten.set(open.planId, open);
  tellSaved();
  const { state } = keepingStore.getState();
  if (state !== 'kept') {
    writeIn(RETRY_MS);
    return;
  }
  // With the edit itself, every time: what waited for another turn of a busy page was once older than a second.
  leaveNote(open);
  writeIn(Math.max(writtenAt + PAUSE_MS - performance.now(), 0));
}

/** Has the open plan written soon if it is not what the shelf holds. */
export function keepIfChanged(open: Keepable): void {
  if (written.get(open.planId) !== open.plan || unwritten.has(open.planId)) keep(open);
}

function writeIn(ms: number): void {
  if (timer !== null) return;
  timer = setTimeout(() => {
    timer = null;
    void writeAll();
  }, ms);
}

/** Writes whatever is not written, and is fulfilled when it is, or when the device refuses. */
export async function writeAll(): Promise<void> {
  if (writing) await writing;
  writing ??= writeEach().finally(() => {
    writing = null;
  });
  await writing;
}

async function writeEach(): Promise<void> {
  writtenAt = performance.now();
  const slowly = setTimeout(() => keepingStore.setState({ slow: true }), SLOW_MS);
  try {
    for (const open of [...unwritten.values()]) await writeOne(open);
    keepingStore.setState({ state: 'kept' });
    if (unwritten.size > 0) writeIn(PAUSE_MS);
  } catch (error) {
    tellRefusal(error);
    writeIn(RETRY_MS);
  } finally {
    clearTimeout(slowly);
    keepingStore.setState({ slow: false });
    tellSaved();
  }
}

async function writeOne(open: OpenPlan): Promise<void> {
  const row = await writeWithRoom(open);
  const isLatest = unwritten.get(open.planId) === open;
  if (!row) {
    const latest = unwritten.get(open.planId) ?? open;
    unwritten.delete(open.planId);
    meetOther(latest);
    return;
  }
  written.set(open.planId, open.plan);
  if (isLatest) unwritten.delete(open.planId);
  tellTabs({ type: 'written', planId: row.id, writing: row.writing });
}

/** Writes, and on a full device gives up pictures and versions for it. */
async function writeWithRoom(open: OpenPlan): ReturnType<typeof writePlan> {
  for (;;) {
    try {
      return await writePlan(open);
    } catch (error) {
      if (nameOf(error) !== QUOTA || !(await giveUpLesser().catch(() => false))) throw error;
    }
  }
}

/** Puts down what is not written, as the page may be going away, and tries to write it as well. */
export function leaveAll(): void {
  if (unwritten.size === 0) return;
  for (const open of unwritten.values()) leaveNote(open);
  void writeAll();
}
