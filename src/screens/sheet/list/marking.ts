import { hideItems } from '../../../core/plan/edits/hideItems';
import { lockItems } from '../../../core/plan/edits/lockItems';
import { itemsOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { planStore } from '../../../desk/planStore';

/** Locks items where they stand, or lets them be moved again: one step of the history. */
export function setLocked(ids: readonly string[], locked: boolean): void {
  planStore.getState().edit(locked ? 'lock' : 'unlock', (plan) => lockItems(plan, { ids, locked }));
}

/** Leaves items out of the roof's drawings, or brings them back. */
export function setHidden(ids: readonly string[], hidden: boolean): void {
  planStore.getState().edit(hidden ? 'hide' : 'bring back', (plan) => hideItems(plan, { ids, hidden }));
}

/** Ids of all items of a group, with one of them last: panels speak of it. */
export const itemsInGroup = (plan: Plan, group: string, last: string): readonly string[] => [
  ...itemsOf(plan).flatMap(({ record }) => (record.group === group && record.id !== last ? [record.id] : [])),
  last,
];
