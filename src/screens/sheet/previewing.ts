import type { Plan } from '../../core/plan/schema/plan';
import { type Gesture, liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { toastStore } from '../../desk/toastStore';

/** Who previews, as a gesture is called. */
export type Previewer = 'lens test' | 'distance test' | `continuity ${string}`;

/** Shows the plan with a change that is not made yet; not while something else is in the hand. */
export function preview(by: Previewer, change: (plan: Plan) => Plan): void {
  const { gesture, beginGesture, moveGesture } = liveStore.getState();
  if (gesture && gesture.itemId !== by) return;
  if (!gesture) beginGesture(by);
  moveGesture(change(planStore.getState().plan));
}

/** Shows the plan as it is again, where this one changed it. */
export function endPreview(by: Previewer): void {
  const { gesture, dropGesture } = liveStore.getState();
  if (gesture?.itemId === by) dropGesture();
}

/** Whether what is in the hand is a change that is only shown. */
export const isPreview = (gesture: Gesture | null): boolean =>
  gesture !== null && /^(lens test|distance test|continuity .*)$/.test(gesture.itemId);

export function endPreviews(): void {
  const { gesture, dropGesture } = liveStore.getState();
  if (isPreview(gesture)) dropGesture();
}

/** Makes the change, as one step, and says so. */
export function make(name: string, change: (plan: Plan) => Plan, sentence: string): void {
  endPreviews();
  const { plan, edit, undo } = planStore.getState();
  const [fault] = edit(name, change);
  const { say } = toastStore.getState();
  if (fault) say(fault.sentence, { tone: 'warn', about: 'proposal' });
  else if (planStore.getState().plan !== plan)
    say(sentence, { about: 'proposal', action: { word: 'Undo', act: undo } });
}
