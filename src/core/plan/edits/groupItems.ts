import { itemOf, itemsOf } from '../items';
import type { Plan } from '../schema/plan';
import { editCommon } from './editCommon';
import { freeId } from './freeId';

/** Makes items one group, chosen and moved together; they leave the groups that they were in. Fewer than two are none. */
export function groupItems(plan: Plan, { ids }: { readonly ids: readonly string[] }): Plan {
  const records = [...new Set(ids)].flatMap((id) => itemOf(plan, id)?.record ?? []);
  if (records.length < 2) return plan;
  const all = itemsOf(plan).map(({ record }) => record);
  const first = records[0].group;
  const isGroup = first !== undefined && records.every(({ group }) => group === first);
  if (isGroup && all.filter(({ group }) => group === first).length === records.length) return plan;
  const taken = all.flatMap(({ group }) => (group === undefined ? [] : [{ id: group }]));
  const group = freeId(taken, 'group');
  return editCommon(plan, ids, (entry) => ({ ...entry, group }));
}
