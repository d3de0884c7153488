import { scheduleOf } from '../../core/night/order/schedule';
import type { Night } from '../../core/night/types';
import { setupsInOrder } from '../../core/plan/nightOrder';
import type { Plan } from '../../core/plan/schema/plan';

/** Places of the plan's setups by their ids. */
function placesOf({ setups }: Plan, ids: readonly string[]): readonly number[] {
  const places = new Map(setups.map(({ id }, place) => [id, place]));
  return ids.flatMap((id) => places.get(id) ?? []);
}

/** Whether two plans have the same setups, so that what is known of one night's jobs is of the other's too. */
const sameSetups = (a: Plan, b: Plan): boolean =>
  a.setups.length === b.setups.length && a.setups.every(({ id }, k) => b.setups[k].id === id);

/**
 * A night as it is shown for a plan: as it was worked out, and where another order came since, or a hand drags one about,
 * in that. Null where nothing fitting is known yet.
 * @param known the plan that the night was worked out for
 * @param draft ids of setups as a hand has them
 */
export function shownNight(
  plan: Plan,
  known: Plan,
  night: Night,
  draft: readonly string[] | null,
): Night | null {
  if (!sameSetups(plan, known)) return null;
  if (plan === known && draft === null) return night;
  const order = placesOf(plan, draft ?? setupsInOrder(plan).map(({ id }) => id));
  const before = night.schedule.order;
  if (order.length === before.length && order.every((job, k) => before[k] === job)) return night;
  return { ...night, schedule: scheduleOf(night.work, order) };
}
