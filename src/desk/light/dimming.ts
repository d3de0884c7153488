import { reshapeItem } from '../../core/plan/edits/reshapeItem';
import { liveStore } from '../liveStore';
import { planStore } from '../planStore';
import { toastStore } from '../toastStore';

/** Into how many steps the travel of a slider is cut; a key or a hand goes by five of them. */
export const DIM_STEPS = 1000;

/**
 * Where a dim lies along its slider: the travel squared is the light, as dimmers for the stage do it, so that a lamp at
 * 2 % is not at the very end. Source: common practice, no source
 */
export const stepOfDim = (dim: number): number => Math.round(Math.sqrt(dim) * DIM_STEPS);

/** The dim at a step of the slider, to six decimals. */
export const dimOfStep = (step: number): number => Math.round((step / DIM_STEPS) ** 2 * 1e6) / 1e6;

const gestureOf = (id: string): string => `dim ${id}`;

/** Shows a lamp at another dim while a hand is on its slider; not while something else is in the hand. */
export function dimLive(id: string, dim: number): void {
  const { gesture, beginGesture, moveGesture } = liveStore.getState();
  if (gesture && gesture.itemId !== gestureOf(id)) return;
  if (!gesture) beginGesture(gestureOf(id));
  moveGesture(reshapeItem(planStore.getState().plan, { id, patch: { dim } }));
}

/** Lets the slider go: all of it is one step of the history. */
export function endDimming(id: string, label: string): void {
  const { gesture, commitGesture } = liveStore.getState();
  if (gesture?.itemId !== gestureOf(id)) return;
  const [fault] = commitGesture(`dim ${label}`);
  if (fault) toastStore.getState().say(fault.sentence, { tone: 'warn' });
}

/** What lamps were dimmed to before they were turned off, in this sitting. */
const before = new Map<string, number>();

/** Turns a lamp off; on again it is as it was, or full where nobody remembers. */
export function turnLamp(id: string, label: string, dim: number): void {
  const { edit } = planStore.getState();
  const next = dim > 0 ? 0 : (before.get(id) ?? 1);
  if (dim > 0) before.set(id, dim);
  edit(`turn ${label} ${dim > 0 ? 'off' : 'on'}`, (plan) => reshapeItem(plan, { id, patch: { dim: next } }));
}
