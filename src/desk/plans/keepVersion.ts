import type { Plan } from '../../core/plan/schema/plan';
import { planStore } from '../planStore';
import { addVersion } from './versionShelf';

async function keepState(planId: string, plan: Plan, reason: string): Promise<void> {
  try {
    await addVersion(planId, plan, reason);
  } catch {
    // A device that keeps nothing keeps no versions either: the header says so, and the history still has the step.
  }
}

/**
 * Keeps the open plan as it is now as a version, before something drastic is done to it. `reason` names that, as
 * an edit is named: `take in a new roof`. What takes several items or a setup away in one edit is kept without being told to.
 */
export function keepVersion(reason: string): Promise<void> {
  const { planId, plan } = planStore.getState();
  return keepState(planId, plan, reason);
}

/** The same for a state that is past already. */
export const keepVersionOf = keepState;
