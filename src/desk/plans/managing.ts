import { parsePlan } from '../../core/plan/parse';
import type { Plan } from '../../core/plan/schema/plan';
import { EMPTY_PLAN } from '../emptyPlan';
import { forgetSitting, planStore, sittingsLeft } from '../planStore';
import { forgetUnwritten, isUnwritten, writeAll } from './keeper';
import { newPlanFrom, openKept } from './opening';
import { copyPicture } from './pictures';
import { newPlanId } from './planId';
import { plansStore, refreshPlans } from './plansStore';
import { nextInstant } from './rows';
import { tellTabs } from './tabs';
import { titleWith } from './titles';
import { dropTakenOut, findPlan, markTakenOut, planRows, takeUpFrom, writePlan } from './writing';

/** A plan of the list: as it is in this page, else as the shelf holds it, where that can be read. */
async function planOf(planId: string): Promise<{ readonly plan: Plan; readonly fileName: string } | null> {
  const open = planStore.getState();
  if (open.planId === planId) return open;
  const sitting = sittingsLeft().get(planId);
  if (sitting && isUnwritten(planId)) return sitting;
  const found = await findPlan(planId);
  if (!found) return sitting ?? null;
  const read = parsePlan(found.document);
  return read.ok ? { plan: read.value, fileName: found.row.fileName } : null;
}

async function listedAnew(planId: string): Promise<void> {
  tellTabs({ type: 'listed', planId, writing: 0 });
  await refreshPlans();
}

/** Puts a copy of a plan into the list, and tells its id; null when the plan cannot be read. */
export async function duplicatePlan(planId: string): Promise<string | null> {
  await writeAll();
  const found = await planOf(planId);
  if (!found) return null;
  const copyId = newPlanId();
  const plan = { ...found.plan, title: titleWith(found.plan.title, 'copy') };
  await writePlan({ planId: copyId, plan, fileName: found.fileName, changedAt: nextInstant() });
  await copyPicture(planId, copyId);
  await listedAnew(copyId);
  return copyId;
}

/** Gives a plan another title. What a title cannot be comes back as a sentence, else null. */
export async function renamePlan(planId: string, title: string): Promise<string | null> {
  const { planId: openId, edit } = planStore.getState();
  const retitled = (plan: Plan): Plan => (plan.title === title ? plan : { ...plan, title });
  if (planId === openId) {
    const faults = edit('rename the plan', retitled);
    if (faults[0]) return faults[0].sentence;
    await writeAll();
    await refreshPlans();
    return null;
  }
  const found = await findPlan(planId);
  const read = found && parsePlan(found.document);
  if (!found || !read?.ok) return 'This plan cannot be read here, so it keeps its name.';
  const checked = parsePlan(retitled(read.value));
  if (!checked.ok) return checked.faults[0].sentence;
  takeUpFrom(found.row);
  const row = await writePlan({
    planId,
    plan: checked.value,
    fileName: found.row.fileName,
    changedAt: nextInstant(),
  });
  if (!row) return 'Another tab changed this plan just now, so it keeps its name.';
  tellTabs({ type: 'written', planId, writing: row.writing });
  await refreshPlans();
  return null;
}

/** Takes a plan out of the list, to be put back until the list is closed. The next plan opens where it was the open one. */
export async function removePlan(planId: string): Promise<void> {
  await writeAll();
  if (planStore.getState().planId === planId) {
    const others = (await planRows()).filter(({ id, takenOut }) => id !== planId && !takenOut);
    let opened = false;
    for (const { id } of others) {
      opened = await openKept(id);
      if (opened) break;
    }
    if (!opened) await newPlanFrom(EMPTY_PLAN);
  }
  await markTakenOut(planId, true);
  await listedAnew(planId);
}

/** Puts a plan back that was taken out. */
export async function putPlanBack(planId: string): Promise<void> {
  await markTakenOut(planId, false);
  await listedAnew(planId);
}

/** Closes the list; what was taken out goes for good. */
export async function closePlans(): Promise<void> {
  const { cards } = plansStore.getState();
  plansStore.setState({ open: false, versionsOf: null });
  const takenOut = cards.filter((card) => card.takenOut).map(({ id }) => id);
  if (takenOut.length === 0) return;
  for (const id of await dropTakenOut(takenOut)) {
    forgetSitting(id);
    forgetUnwritten(id);
    tellTabs({ type: 'listed', planId: id, writing: 0 });
  }
}
