import { fileOpen } from 'browser-fs-access';
import { type Choice, differencesOf } from '../../core/plan/merge/differences';
import { mergePlans } from '../../core/plan/merge/mergePlans';
import type { Plan } from '../../core/plan/schema/plan';
import { isAbort } from '../assets/isAbort';
import { OPENED_FILES, readPlanFile } from '../files';
import { readLink } from '../linkReader/linkReader';
import { planStore } from '../planStore';
import { keepVersion } from '../plans/keepVersion';
import { keepRecords } from '../plans/same';
import { toastStore } from '../toastStore';
import { type Beginning, beginningsOf, likelyBeginning } from './beginnings';
import { leaveMerge, mergeStore } from './mergeStore';

async function putBeside(theirs: Plan, from: string): Promise<void> {
  const { planId, plan } = planStore.getState();
  const beginnings = await beginningsOf(planId);
  const base = likelyBeginning(beginnings, plan, theirs);
  mergeStore.setState({
    open: true,
    trouble: null,
    beside: { planId, theirs, from, beginnings, base, chosen: new Map() },
  });
}

const tell = (trouble: string): void => mergeStore.setState({ open: true, trouble });

/** Reads a file and compares its plan with the open one; what is no plan is said. */
export async function compareWithFile(file: File): Promise<void> {
  const read = await readPlanFile(file);
  if (read.ok) await putBeside(read.value, file.name);
  else tell(`${file.name} was not compared. ${read.faults[0]}`);
}

/** Asks for a file to compare with. */
export async function chooseFileToCompare(): Promise<void> {
  try {
    await compareWithFile(await fileOpen(OPENED_FILES));
  } catch (error) {
    if (!isAbort(error)) tell(`The file could not be opened: ${String(error)}`);
  }
}

/** Reads a link, a whole address or what follows its `#`, and compares its plan with the open one. */
export async function compareWithLink(typed: string): Promise<void> {
  // In a worker: a link comes from anybody, and may be made to take as long as it can.
  const read = await readLink(typed.slice(typed.indexOf('#') + 1)).ending;
  if (read.ok) await putBeside(read.plan, 'a link');
  else tell(read.sentence);
}

/** Chooses what a difference is taken as. */
export function choose(keys: readonly string[], choice: Choice): void {
  const { beside } = mergeStore.getState();
  if (!beside) return;
  const chosen = new Map([...beside.chosen, ...keys.map((key) => [key, choice] as const)]);
  mergeStore.setState({ beside: { ...beside, chosen } });
}

/** Says what both began with. */
export function setBase(base: Beginning | null): void {
  const { beside } = mergeStore.getState();
  if (beside) mergeStore.setState({ beside: { ...beside, base, chosen: new Map() } });
}

/** While what there was is being kept: a second press is none. */
let isTaking = false;

/** Makes the merge, as one step of the history; what there was is kept as a version too. Says what there is to say. */
export async function takeMerge(): Promise<void> {
  if (isTaking) return;
  const { beside } = mergeStore.getState();
  const { plan, planId, edit, undo } = planStore.getState();
  if (!beside || beside.planId !== planId) return;
  const { plan: merged } = mergePlans(plan, beside.theirs, beside.chosen, beside.base?.plan ?? null);
  const after = keepRecords(plan, merged);
  const count = differencesOf(plan, after).length;
  const { say } = toastStore.getState();
  if (after === plan) {
    leaveMerge();
    say('Nothing of theirs was taken: the plan is as it was.', { about: 'merge' });
    return;
  }
  isTaking = true;
  await keepVersion(`take in ${beside.from}`).finally(() => {
    isTaking = false;
  });
  const now = planStore.getState();
  if (now.plan !== plan || now.planId !== planId) {
    say('The plan changed meanwhile: compare again.', { tone: 'warn', about: 'merge' });
    return;
  }
  const [fault] = edit(`take in ${beside.from}`, () => after);
  if (fault) {
    say(fault.sentence, { tone: 'warn', about: 'merge' });
    return;
  }
  leaveMerge();
  say(`${count === 1 ? 'One thing is' : `${count} things are`} as in ${beside.from} now.`, {
    about: 'merge',
    action: { word: 'Undo', act: undo },
  });
}
