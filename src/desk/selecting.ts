import { anchorOf, carrierOf } from '../core/plan/edits/anchorOf';
import { expandGroup } from '../core/plan/edits/expandGroup';
import { itemOf, itemsOf } from '../core/plan/items';
import type { Plan } from '../core/plan/schema/plan';
import { livePlan } from './liveStore';
import { sessionStore } from './sessionStore';

/**
 * How a press chooses: `alone`, in place of what was chosen; `add`, to it, or out of it; `one`, a single thing even
 * where it belongs to a group.
 */
export type Choosing = 'alone' | 'add' | 'one';

/** The ids with all that are in a group with one of them; the last one stays the last, that panels speak of. */
function withGroups(plan: Plan, ids: readonly string[]): readonly string[] {
  const last = ids.at(-1);
  return [...expandGroup(plan, ids).filter((id) => id !== last), ...(last === undefined ? [] : [last])];
}

/** Chooses an item. */
export function chooseItem(id: string, how: Choosing = 'alone'): void {
  const { selectedIds, setSelectedIds } = sessionStore.getState();
  const ids = how === 'one' ? [id] : withGroups(livePlan(), [id]);
  if (how !== 'add') {
    setSelectedIds(ids);
    return;
  }
  const others = selectedIds.filter((each) => !ids.includes(each));
  setSelectedIds(selectedIds.includes(id) ? others : [...others, ...ids]);
}

/** Chooses several things with their groups, in place of what was chosen or beside it. */
export function chooseItems(ids: readonly string[], beside: boolean): void {
  const { selectedIds, setSelectedIds } = sessionStore.getState();
  setSelectedIds(withGroups(livePlan(), beside ? [...selectedIds, ...ids] : ids));
}

/** All that is neither locked nor hidden: what lies under a lock is the ground that one works on. */
export function chooseAll(): void {
  const free = itemsOf(livePlan()).filter(({ record }) => !record.locked && !record.hidden);
  sessionStore.getState().setSelectedIds(free.map(({ record }) => record.id));
}

/** Whether an item lets itself be moved by hand: neither it nor the stand that carries it is locked, it is somewhere, and no camera that rides on it says where. */
export function isMovable(plan: Plan, id: string): boolean {
  const item = itemOf(plan, id);
  const carrier = itemOf(plan, carrierOf(plan, id) ?? id);
  if (item?.section === 'gear' && item.record.kind === 'dolly' && item.record.rides !== undefined)
    return false;
  return item !== null && !item.record.locked && !carrier?.record.locked && anchorOf(plan, id) !== null;
}

/** Of the ids those that a hand moves. */
export const movableOf = (plan: Plan, ids: readonly string[]): readonly string[] =>
  ids.filter((id) => isMovable(plan, id));
