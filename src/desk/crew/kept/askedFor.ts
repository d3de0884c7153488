import { standUnder } from '../../../core/plan/edits/anchorOf';
import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';

/** What a tick is asked for by, the same wherever the tick stands: a setup, else an item with all that it carries. */
export function askedFor(plan: Plan, id: string): unknown {
  const setup = plan.setups.find((each) => each.id === id);
  if (setup) return setup;
  const item = itemOf(plan, id);
  return item && [item.record, ...plan.gear.filter((gear) => standUnder(gear) === id)];
}
