import type { NightSetup } from '../schema/night';
import type { Plan } from '../schema/plan';
import { type Patch, withEntry, withNight } from './nightRecord';

/**
 * Sets what the night knows of one setup: its minutes, how it is lit, when it may be shot, how its ground has to be, who
 * is needed. Undefined takes a field away; what the schema refuses, or a performer that there is not, changes nothing.
 */
export function setNightSetup(
  plan: Plan,
  { setupId, patch }: { readonly setupId: string; readonly patch: Patch<Omit<NightSetup, 'setup'>> },
): Plan {
  const { cast } = patch;
  if (!plan.setups.some(({ id }) => id === setupId)) return plan;
  if (cast && new Set(cast).size < cast.length) return plan;
  if (cast?.some((id) => plan.cast.every((performer) => performer.id !== id))) return plan;
  const list = plan.night?.setups ?? [];
  const setups = withEntry<NightSetup>(list, ({ setup }) => setup === setupId, { setup: setupId }, patch);
  return withNight(plan, { ...plan.night, setups });
}
