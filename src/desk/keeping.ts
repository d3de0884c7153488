import { planStore } from './planStore';
import { isDrastic } from './plans/drastic';
import { followTabs } from './plans/following';
import { isAllSafe, isWritten, keep, keepIfChanged, leaveAll, onOtherWriting } from './plans/keeper';
import { keepVersionOf } from './plans/keepVersion';
import { goOnBeside } from './plans/opening';
import { refreshPlans } from './plans/plansStore';
import { readPreference, writePreference } from './preferences';

/** Asks the browser, once, not to clear the shelf when the device runs short of room. */
function askToStay(): void {
  if (readPreference('asked to stay', ['yes'])) return;
  writePreference('asked to stay', 'yes');
  navigator.storage?.persist?.().catch(() => {});
}

/**
 * Keeps the plans on this device: every edit at once or with those of the same moment, what is left when the page is
 * put away, a version before every drastic edit; and follows what other tabs write.
 */
export function startKeeping(): void {
  onOtherWriting(goOnBeside);
  followTabs(() => void refreshPlans());
  planStore.subscribe((state, before) => {
    if (!state.opened) return;
    const { planId, plan, fileName } = state;
    // What the page starts with comes from the shelf or can be had again.
    if (!before.opened) isWritten(planId, plan);
    if (!before.opened || planId !== before.planId) return;
    if (plan === before.plan && fileName === before.fileName) return;
    if (fileName === before.fileName) keepIfChanged({ planId, plan, fileName });
    else keep({ planId, plan, fileName });
    if (state.edits === before.edits) return;
    askToStay();
    if (isDrastic(before.plan, plan)) void keepVersionOf(planId, before.plan, state.editName);
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') leaveAll();
  });
  window.addEventListener('pagehide', leaveAll);
  window.addEventListener('beforeunload', (event) => {
    // The browser asks in its own words whether to leave.
    if (!isAllSafe()) event.preventDefault();
  });
}
