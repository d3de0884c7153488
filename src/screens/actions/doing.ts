import type { Copied } from '../../core/plan/edits/copies';
import { itemOf, nameOf } from '../../core/plan/items';
import { named } from '../../core/plan/named';
import type { Plan } from '../../core/plan/schema/plan';
import { liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { sessionStore } from '../../desk/sessionStore';
import { toastStore } from '../../desk/toastStore';
import { nameInText } from '../overhead/words';

/** What several things are called in a sentence: the one by its name, more by their number. */
export function calledOf(plan: Plan, ids: readonly string[]): string {
  const [first] = ids;
  const only = first === undefined || ids.length > 1 ? null : itemOf(plan, first);
  return only ? nameInText(nameOf(only)) : `${ids.length} things`;
}

/** The same at the beginning of a sentence. */
export function namedOf(plan: Plan, ids: readonly string[]): string {
  const [first] = ids;
  if (ids.length !== 1 || first === undefined) return `${ids.length} things`;
  const item = itemOf(plan, first);
  return item ? named(nameOf(item)) : 'It';
}

/** Makes an edit, one step of the history; what is refused is said. Says whether anything changed. */
export function change(name: string, edit: (plan: Plan) => Plan): boolean {
  if (liveStore.getState().gesture) return false;
  const before = planStore.getState().plan;
  const [fault] = planStore.getState().edit(name, edit);
  if (fault) toastStore.getState().say(fault.sentence, { tone: 'warn' });
  return planStore.getState().plan !== before;
}

/** Makes an edit that brings new items, and chooses them. */
export function bring(name: string, edit: (plan: Plan) => Copied): boolean {
  let ids: readonly string[] = [];
  const done = change(name, (plan) => {
    const copied = edit(plan);
    ids = copied.ids;
    return copied.plan;
  });
  if (done) sessionStore.getState().setSelectedIds(ids);
  return done;
}

/** Says what was done, with the way back. */
export function tell(sentence: string): void {
  const { undo } = planStore.getState();
  toastStore.getState().say(sentence, { about: 'action', action: { word: 'Undo', act: undo } });
}
