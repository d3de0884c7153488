import type { Plan } from '../schema/plan';
import type { Stand } from '../standEnd';
import { editRecord } from './editRecord';
import { orSame } from './motion';
import { kept, tidyMetres } from './tidy';

export type Bags = NonNullable<Stand['bags']>;

/** Lays sandbags over a stand's legs, 1 to 20 of half a kilogram to 50 kg each, or, with null, takes them off. */
export function setBags(plan: Plan, { id, bags }: { readonly id: string; readonly bags: Bags | null }): Plan {
  return editRecord(plan, id, {
    gear: (gear) => {
      if (gear.kind !== 'stand') return gear;
      if (bags) {
        const count = kept(Math.round(bags.count), 1, 20);
        const kilograms = kept(tidyMetres(bags.kilograms), 0.5, 50);
        return orSame(gear, { ...gear, bags: { count, kilograms } });
      }
      const { bags: before, ...rest } = gear;
      return before ? rest : gear;
    },
  });
}
