import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { kept, tidyMetres } from './tidy';

const NARROWEST_METRES = 0.1;

/** Opens a stand's legs to a circle of so many metres, from 10 cm to as wide as its class goes, or, with null, that wide. */
export function setSpread(
  plan: Plan,
  { id, metres }: { readonly id: string; readonly metres: number | null },
): Plan {
  return editRecord(plan, id, {
    gear: (gear) => {
      if (gear.kind !== 'stand') return gear;
      const widest = plan.kit.stands.find((entry) => entry.id === gear.stand)?.footprintMetres ?? 5;
      const { spreadMetres: before, ...rest } = gear;
      if (metres === null) return before === undefined ? gear : rest;
      const spreadMetres = kept(tidyMetres(metres), Math.min(NARROWEST_METRES, widest), widest);
      return spreadMetres === before ? gear : { ...gear, spreadMetres };
    },
  });
}
