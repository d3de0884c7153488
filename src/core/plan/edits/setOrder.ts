import type { Plan } from '../schema/plan';
import { withNight } from './nightRecord';

/**
 * Sets the order in which the setups are shot, as a suggestion has it; an empty one is the plan's own. One that names a
 * setup twice, or one that there is not, changes nothing.
 */
export function setOrder(plan: Plan, { order }: { readonly order: readonly string[] }): Plan {
  const known = new Set(plan.setups.map(({ id }) => id));
  if (new Set(order).size < order.length || order.some((id) => !known.has(id))) return plan;
  return withNight(plan, { ...plan.night, order: [...order] });
}
