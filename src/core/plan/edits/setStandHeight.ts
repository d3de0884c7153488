import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';

/** How low and how high a stand goes, metres, from its class in the plan's kit; null for what is no stand. */
export function standReach(
  plan: Plan,
  id: string,
): { readonly lowestMetres: number; readonly highestMetres: number } | null {
  const gear = plan.gear.find((entry) => entry.id === id);
  if (gear?.kind !== 'stand') return null;
  return plan.kit.stands.find((entry) => entry.id === gear.stand) ?? null;
}

/** Raises or lowers a stand's spigot, metres above its foot; other things stay. `standReach` tells the limits. */
export function setStandHeight(
  plan: Plan,
  { id, heightMetres }: { readonly id: string; readonly heightMetres: number },
): Plan {
  return editRecord(plan, id, {
    gear: (gear) =>
      gear.kind === 'stand' && gear.heightMetres !== heightMetres ? { ...gear, heightMetres } : gear,
  });
}
