import type { HeadClass, StandClass } from '../schema/kit';
import type { Plan } from '../schema/plan';
import { withKit } from './addItem';
import { editRecord } from './editRecord';
import { kept } from './tidy';

/**
 * Makes a lamp or a stand one of another class, which is copied into the plan's kit where that has none of its id. A
 * stand's height and spread come within what the class reaches. What has no class of that sort stays.
 */
export function setClass(
  plan: Plan,
  args: { readonly id: string } & ({ readonly head: HeadClass } | { readonly stand: StandClass }),
): Plan {
  const kit = withKit(plan.kit, 'head' in args ? { heads: [args.head] } : { stands: [args.stand] });
  if (!kit) return plan;
  const changed = editRecord(plan, args.id, {
    gear: (gear) => {
      if ('head' in args)
        return 'head' in gear && gear.head !== args.head.id ? { ...gear, head: args.head.id } : gear;
      if (gear.kind !== 'stand' || gear.stand === args.stand.id) return gear;
      const { lowestMetres, highestMetres, footprintMetres } =
        kit.stands.find(({ id }) => id === args.stand.id) ?? args.stand;
      const { spreadMetres, ...rest } = gear;
      return {
        ...rest,
        stand: args.stand.id,
        heightMetres: kept(gear.heightMetres, lowestMetres, highestMetres),
        ...(spreadMetres !== undefined && spreadMetres < footprintMetres && { spreadMetres }),
      };
    },
  });
  return changed === plan ? plan : { ...changed, kit };
}
