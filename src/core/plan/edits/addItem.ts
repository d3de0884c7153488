import { type Item, itemOf } from '../items';
import type { HeadClass, Kit, StandClass } from '../schema/kit';
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

/** The kit with the classes that it lacks; the same kit where it lacks none, null where it would be too full. */
export function withKit(kit: Kit, needed: NeededKit): Kit | null {
  const heads = withMissing(kit.heads, needed.heads);
  const stands = withMissing(kit.stands, needed.stands);
  if (heads === kit.heads && stands === kit.stands) return kit;
  return heads.length > MOST.heads || stands.length > MOST.stands ? null : { ...kit, heads, stands };
}

/**
 * Adds an item to the end of its section, with the classes that it needs. A plan that already has an item of
 * that id, or whose section or kit is full, stays as it is.
 */
export function addItem(plan: Plan, args: Item & { readonly kit?: NeededKit }): Plan {
  if (itemOf(plan, args.record.id)) return plan;
  const kit = withKit(plan.kit, args.kit ?? {});
  if (!kit) return plan;
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
