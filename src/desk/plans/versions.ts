import { named } from '../../core/plan/named';
import { parsePlan } from '../../core/plan/parse';
import type { Plan } from '../../core/plan/schema/plan';
import { planStore } from '../planStore';
import { toastStore } from '../toastStore';
import { differenceSentence, differencesOf } from './differences';
import { keepVersion } from './keepVersion';
import { newPlanFrom, openKept, tellOpen } from './opening';
import { titleWith } from './titles';
import { findVersions } from './versionShelf';
import { findPlan } from './writing';

/** A kept version as the list shows it. */
export interface VersionCard {
  readonly at: number;
  readonly reason: string;
  /** What has changed since, or why it cannot be read. */
  readonly sentence: string;
  /** Null when it cannot be read. */
  readonly plan: Plan | null;
}

async function stateNow(planId: string): Promise<Plan | null> {
  const open = planStore.getState();
  if (open.planId === planId) return open.plan;
  const found = await findPlan(planId);
  const read = found && parsePlan(found.document);
  return read?.ok ? read.value : null;
}

/** The versions kept of a plan, the newest first, each with what has changed since. */
export async function listVersions(planId: string): Promise<VersionCard[]> {
  const now = await stateNow(planId);
  return (await findVersions(planId)).map(({ at, reason, document }) => {
    const read = parsePlan(document);
    if (!read.ok) return { at, reason, sentence: read.faults[0].sentence, plan: null };
    const sentence = now ? differenceSentence(differencesOf(read.value, now)) : '';
    return { at, reason, sentence, plan: read.value };
  });
}

/** Opens a version as a plan of its own, beside the one that it was kept of. */
export async function openVersion({ plan }: VersionCard): Promise<void> {
  if (!plan) return;
  const before = planStore.getState().planId;
  await newPlanFrom(plan, titleWith(plan.title, 'earlier version'));
  tellOpen(before);
}

/** Goes back to a version in its own plan: one step of the history, and what there was is kept as a version too. */
export async function goBackTo(planId: string, { plan }: VersionCard): Promise<void> {
  if (!plan || !(await openKept(planId))) return;
  await keepVersion('go back to an earlier version');
  const { edit, undo } = planStore.getState();
  const faults = edit('go back to an earlier version', () => plan);
  const { say } = toastStore.getState();
  if (faults[0]) say(faults[0].sentence, { tone: 'warn' });
  else say(`${named(plan.title)} is as it was.`, { action: { word: 'Undo', act: undo } });
}
