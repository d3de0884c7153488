import { named } from '../../core/plan/named';
import { parsePlan } from '../../core/plan/parse';
import type { Plan } from '../../core/plan/schema/plan';
import { liveStore } from '../liveStore';
import { planStore, sittingsLeft } from '../planStore';
import { toastStore } from '../toastStore';
import { forgetUnwritten, isWritten, keep, tellRefusal, writeAll } from './keeper';
import { lastOpen, rememberOpen } from './lastOpen';
import { takePicture } from './pictures';
import { newPlanId } from './planId';
import type { PlanRow } from './shelfTypes';
import { tellTabs } from './tabs';
import { takeUpLeft } from './takingUp';
import { titleWith } from './titles';
import { findPlan, type Keepable, planRows, takeUpFrom } from './writing';

/** One toast speaks of what was opened last, or was not. */
export const OPENING = 'opening';

/** Writes what is not written and takes the plan's picture, before another comes in its place. */
async function layAside(): Promise<void> {
  liveStore.getState().dropGesture();
  await takePicture();
  await writeAll();
}

/** Opens a plan as a kept plan of its own; the one that was open stays in the list. */
export async function newPlanFrom(
  plan: Plan,
  title = plan.title,
  fileName = 'new.plan.json',
): Promise<string> {
  await layAside();
  const planId = newPlanId();
  const titled = title === plan.title ? plan : { ...plan, title };
  planStore.getState().openPlan(titled, fileName, planId);
  keep({ planId, plan: titled, fileName });
  await writeAll();
  rememberOpen(planId);
  tellTabs({ type: 'listed', planId, writing: 0 });
  return planId;
}

/** Says that a kept plan cannot be read, and why; it stays where it is. */
const tellUnreadable = (title: string, sentence: string): void =>
  toastStore
    .getState()
    .say(`${named(title)} cannot be read here and stays in the list of plans. ${sentence}`, {
      tone: 'warn',
      about: OPENING,
    });

/** What the shelf holds of a plan, read; else what this sitting remembers of it; null when there is neither. */
async function readKept(planId: string): Promise<Keepable | null> {
  const sitting = sittingsLeft().get(planId);
  const remembered = sitting ? { planId, plan: sitting.plan, fileName: sitting.fileName } : null;
  try {
    const found = await findPlan(planId);
    if (!found) return remembered;
    const read = parsePlan(found.document);
    if (!read.ok) {
      tellUnreadable(found.row.title, read.faults[0].sentence);
      return null;
    }
    takeUpFrom(found.row);
    return { planId, plan: read.value, fileName: found.row.fileName };
  } catch (error) {
    tellRefusal(error);
    return remembered;
  }
}

/** Opens a kept plan and says whether it did; why not is said in a toast. */
export async function openKept(planId: string): Promise<boolean> {
  if (planStore.getState().planId === planId) return true;
  await layAside();
  const kept = await readKept(planId);
  if (!kept) return false;
  planStore.getState().openPlan(kept.plan, kept.fileName, planId);
  isWritten(planId, planStore.getState().plan);
  rememberOpen(planId);
  return true;
}

/** Opens a kept plan and offers the way back. */
export async function openWithWayBack(planId: string): Promise<boolean> {
  const before = planStore.getState().planId;
  if (!(await openKept(planId))) return false;
  if (before !== planId) tellOpen(before);
  return true;
}

/** Says what is open now, with the way back to the plan before. */
export function tellOpen(before: string): void {
  toastStore.getState().say(`${named(planStore.getState().plan.title)} is open.`, {
    about: OPENING,
    action: { word: 'Undo', act: () => void openKept(before) },
  });
}

/** Says what closed tabs held beside the plans that were written since. */
function offerAside(aside: readonly PlanRow[]): void {
  for (const { id, title } of aside) {
    toastStore
      .getState()
      .say(`A tab that was closed held another state of the plan: it is kept as ${named(title)}.`, {
        tone: 'warn',
        about: id,
        action: { word: 'Open it', act: () => void openWithWayBack(id) },
      });
  }
}

/** The plan that this device had open last, or the next that can be read; null when there is none. */
export async function restoreKept(): Promise<Keepable | null> {
  try {
    offerAside(await takeUpLeft());
    const rows = await planRows();
    const there = new Set(rows.filter(({ takenOut }) => !takenOut).map(({ id }) => id));
    const wanted = (await lastOpen()).filter((id) => there.has(id));
    for (const planId of new Set([...wanted, ...there])) {
      const kept = await readKept(planId);
      if (!kept) continue;
      isWritten(planId, kept.plan);
      rememberOpen(planId);
      return kept;
    }
  } catch (error) {
    tellRefusal(error);
  }
  return null;
}

/**
 * Goes on with a plan that another tab has written since under an id of its own, so that neither is lost, and says so.
 */
export function goOnBeside({ planId, plan, fileName }: Keepable): void {
  const ownId = newPlanId();
  const title = titleWith(plan.title, 'from another tab');
  const { branchOff, planId: openId } = planStore.getState();
  if (openId === planId) {
    branchOff(ownId, title);
    rememberOpen(ownId);
    keep({ planId: ownId, plan: planStore.getState().plan, fileName });
  } else keep({ planId: ownId, plan: { ...plan, title }, fileName });
  forgetUnwritten(planId);
  toastStore
    .getState()
    .say(
      `Another tab changed ${named(plan.title)} at the same time. What you did here is kept as ${named(title)}.`,
      {
        tone: 'warn',
        about: 'other tab',
        action: { word: 'Show the other', act: () => void openWithWayBack(planId) },
      },
    );
}
