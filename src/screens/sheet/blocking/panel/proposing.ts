import type { Plan } from '../../../../core/plan/schema/plan';
import { blockingStore } from '../../../../desk/blocking/blockingStore';
import { liveStore } from '../../../../desk/liveStore';
import { planStore } from '../../../../desk/planStore';
import { toastStore } from '../../../../desk/toastStore';

/** Shows what a move would make of the plan, before it is done. Says whether it would change anything. */
export function propose(performerId: string, change: (plan: Plan) => Plan): boolean {
  const { plan } = planStore.getState();
  const draft = change(plan);
  const live = liveStore.getState();
  if (draft === plan) {
    dropProposal();
    return false;
  }
  if (live.gesture?.itemId !== performerId) live.beginGesture(performerId);
  live.moveGesture(draft);
  blockingStore.setState({ proposing: performerId });
  return true;
}

/** Does what is shown, one step of the history. */
export function acceptProposal(name: string): void {
  if (blockingStore.getState().proposing === null) return;
  blockingStore.setState({ proposing: null });
  const [fault] = liveStore.getState().commitGesture(name);
  if (fault) toastStore.getState().say(fault.sentence, { tone: 'warn' });
}

/** Gives up what is shown. */
export function dropProposal(): void {
  if (blockingStore.getState().proposing === null) return;
  blockingStore.setState({ proposing: null });
  liveStore.getState().dropGesture();
}
