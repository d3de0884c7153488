import type { Plan } from '../schema/plan';
import { type Common, editCommon } from './editCommon';
import { expandGroup } from './expandGroup';

/** Takes the groups apart that items are in. */
export const ungroupItems = (plan: Plan, { ids }: { readonly ids: readonly string[] }): Plan =>
  editCommon(plan, expandGroup(plan, ids), alone);

function alone<Entry extends Common>(entry: Entry): Entry {
  if (entry.group === undefined) return entry;
  const { group: _, ...rest } = entry;
  return rest as Entry;
}
