import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { kept, tidyMetres } from './tidy';

const LONGEST_METRES = 3;

/** Sets how far above the spigot a head tilts, 0 to 3 metres; null for as short as its size lets it be. */
export function setYoke(
  plan: Plan,
  { id, metres }: { readonly id: string; readonly metres: number | null },
): Plan {
  return editRecord(plan, id, {
    gear: (gear) => {
      if (gear.kind !== 'head') return gear;
      const { yokeMetres: before, ...rest } = gear;
      if (metres === null) return before === undefined ? gear : rest;
      const yokeMetres = kept(tidyMetres(metres), 0, LONGEST_METRES);
      return yokeMetres === before ? gear : { ...gear, yokeMetres };
    },
  });
}
