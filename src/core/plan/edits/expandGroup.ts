import { itemsOf } from '../items';
import type { Plan } from '../schema/plan';

/** The ids with those of everything in their groups, the given ones first. */
export function expandGroup(plan: Plan, ids: readonly string[]): readonly string[] {
  const chosen = new Set(ids);
  const records = itemsOf(plan).map(({ record }) => record);
  const groups = new Set(
    records.flatMap(({ id, group }) => (group !== undefined && chosen.has(id) ? [group] : [])),
  );
  const others = records.filter(
    ({ id, group }) => group !== undefined && groups.has(group) && !chosen.has(id),
  );
  return [...chosen, ...others.map(({ id }) => id)];
}
