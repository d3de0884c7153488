import type { Plan } from '../../../core/plan/schema/plan';
import { liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { toastStore } from '../../../desk/toastStore';

/** What a preview is called among the gestures. */
const PREVIEW = 'lens test';

/** Shows the plan with a change that is not made yet; not while something else is in the hand. */
export function preview(change: (plan: Plan) => Plan): void {
  const { gesture, beginGesture, moveGesture } = liveStore.getState();
  if (gesture && gesture.itemId !== PREVIEW) return;
  if (!gesture) beginGesture(PREVIEW);
  moveGesture(change(planStore.getState().plan));
}

/** Shows the plan as it is again. */
export function endPreview(): void {
  const { gesture, dropGesture } = liveStore.getState();
  if (gesture?.itemId === PREVIEW) dropGesture();
}

/** Makes the change, as one step, and says so. */
export function make(name: string, change: (plan: Plan) => Plan, sentence: string): void {
  endPreview();
  const { plan, edit, undo } = planStore.getState();
  const [fault] = edit(name, change);
  const { say } = toastStore.getState();
  if (fault) say(fault.sentence, { tone: 'warn', about: PREVIEW });
  else if (planStore.getState().plan !== plan)
    say(sentence, { about: PREVIEW, action: { word: 'Undo', act: undo } });
}
