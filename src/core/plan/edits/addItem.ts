import { type Item, itemOf } from '../items';
import type { HeadClass, StandClass } from '../schema/kit';
import type { Plan } from '../schema/plan';
import { MOST } from './limits';

/** Classes that a new item may need: each is copied into the plan's kit where that lacks one of its id. */
export interface NeededKit {
  readonly heads?: readonly HeadClass[];
  readonly stands?: readonly StandClass[];
}

const withMissing = <Entry extends { readonly id: string }>(
  list: Entry[],
  entries: readonly Entry[] | undefined,
): Entry[] => {
  const missing = (entries ?? []).filter(({ id }) => !list.some((entry) => entry.id === id));
  return missing.length === 0 ? list : [...list, ...missing];
};

/**
 * Adds an item to the end of its section, with the classes that it needs. A plan that already has an item of
 * that id, or whose section or kit is full, stays as it is.
 */
export function addItem(plan: Plan, args: Item & { readonly kit?: NeededKit }): Plan {
  if (itemOf(plan, args.record.id)) return plan;
  const heads = withMissing(plan.kit.heads, args.kit?.heads);
  const stands = withMissing(plan.kit.stands, args.kit?.stands);
  if (heads.length > MOST.heads || stands.length > MOST.stands) return plan;
  const kit =
    heads === plan.kit.heads && stands === plan.kit.stands ? plan.kit : { ...plan.kit, heads, stands };
  if (args.section === 'piece') {
    if (plan.pieces.length >= MOST.pieces) return plan;
    return { ...plan, kit, pieces: [...plan.pieces, args.record] };
  }
  if (args.section === 'cast') {
    if (plan.cast.length >= MOST.cast) return plan;
    return { ...plan, kit, cast: [...plan.cast, args.record] };
  }
  if (plan.gear.length >= MOST.gear) return plan;
  return { ...plan, kit, gear: [...plan.gear, args.record] };
}
