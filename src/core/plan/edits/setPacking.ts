import type { NightPacking } from '../schema/night';
import type { Plan } from '../schema/plan';
import { type Patch, patched, withNight } from './nightRecord';

/** Sets how the packing list is reckoned: slack of cables, water, batteries. Undefined takes a field away. */
export function setPacking(
  plan: Plan,
  { patch }: { readonly patch: Patch<Omit<NightPacking, 'spares'>> },
): Plan {
  const packing = patched<NightPacking>(plan.night?.packing ?? {}, patch);
  return withNight(plan, { ...plan.night, packing });
}
