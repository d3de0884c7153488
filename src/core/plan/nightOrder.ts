import type { Plan } from './schema/plan';
import type { Setup } from './schema/setup';

/** A plan's setups as the night has them: in its own order, then those that it does not name, as the plan has them. */
export function setupsInOrder({ setups, night }: Plan): readonly Setup[] {
  const order = night?.order;
  if (!order || order.length === 0) return setups;
  const byId = new Map(setups.map((setup) => [setup.id, setup]));
  const named = new Set(order);
  return [...order.flatMap((id) => byId.get(id) ?? []), ...setups.filter(({ id }) => !named.has(id))];
}
