import type { Gear } from '../schema/gear';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';

export type Modifier = NonNullable<Extract<Gear, { readonly kind: 'head' }>['modifier']>;

/** Puts a modifier before a head, or, with null, takes it off. */
export function setModifier(
  plan: Plan,
  { id, modifier }: { readonly id: string; readonly modifier: Modifier | null },
): Plan {
  return editRecord(plan, id, {
    gear: (gear) => {
      if (gear.kind !== 'head' || (gear.modifier ?? null) === modifier) return gear;
      const { modifier: _, ...rest } = gear;
      return modifier === null ? rest : { ...rest, modifier };
    },
  });
}
