import { setupsInOrder } from '../nightOrder';
import type { Plan } from '../schema/plan';
import { setOrder } from './setOrder';
import { kept } from './tidy';

/** Moves a setup to another place of the night's order, from 0; beyond the ends is at the ends. */
export function moveInOrder(
  plan: Plan,
  { setupId, to }: { readonly setupId: string; readonly to: number },
): Plan {
  const order = setupsInOrder(plan).map(({ id }) => id);
  const from = order.indexOf(setupId);
  if (from < 0 || !Number.isFinite(to)) return plan;
  const place = kept(Math.round(to), 0, order.length - 1);
  if (place === from) return plan;
  const without = order.filter((id) => id !== setupId);
  return setOrder(plan, { order: [...without.slice(0, place), setupId, ...without.slice(place)] });
}
