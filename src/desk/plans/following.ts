import { named } from '../../core/plan/named';
import { parsePlan } from '../../core/plan/parse';
import { liveStore } from '../liveStore';
import { planStore } from '../planStore';
import { toastStore } from '../toastStore';
import { isUnwritten, isWritten, tellRefusal } from './keeper';
import { keepRecords } from './same';
import { listenToTabs } from './tabs';
import { findPlan, isNews, takeUpFrom } from './writing';

/**
 * Takes over what another tab wrote of the open plan, as one step of the history, where nothing of its own is unwritten
 * here: else the next writing finds the other's, and goes on beside it.
 */
async function follow(): Promise<void> {
  const { planId, opened } = planStore.getState();
  if (!opened || isUnwritten(planId)) return;
  const found = await findPlan(planId);
  if (!found || !isNews(planId, found.row.writing)) return;
  const read = parsePlan(found.document);
  // While it was read an edit or a drag may have begun, or another plan been opened.
  const isStillFree =
    planStore.getState().planId === planId && !isUnwritten(planId) && liveStore.getState().gesture === null;
  if (!read.ok || !isStillFree) return;
  const { plan: before, edit, undo } = planStore.getState();
  const after = keepRecords(before, read.value);
  takeUpFrom(found.row);
  isWritten(planId, after);
  if (after === before) return;
  edit('what another tab changed', () => after);
  toastStore.getState().say(`Another tab changed ${named(after.title)}, and this one shows it now.`, {
    about: 'other tab',
    action: { word: 'Undo', act: undo },
  });
}

/** Follows what other tabs write of the open plan, and tells `listed` whenever anything on the shelf changed. */
export function followTabs(listed: () => void): void {
  const look = (): void => void follow().catch(tellRefusal);
  listenToTabs(({ type, planId }) => {
    if (type === 'written' && planId === planStore.getState().planId) look();
    listed();
  });
  liveStore.subscribe((state, before) => {
    if (before.gesture !== null && state.gesture === null) look();
  });
  // A page that slept has heard nothing.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') look();
  });
  document.addEventListener('resume', look);
}
