import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';

/**
 * Gives a setup another lens of the plan's kit; a stop that the lens does not have becomes its nearest.
 * An id that the kit lacks changes nothing.
 */
export function setLens(
  plan: Plan,
  { setupId, lens }: { readonly setupId: string; readonly lens: string },
): Plan {
  const found = plan.kit.lenses.find((entry) => entry.id === lens);
  if (!found) return plan;
  return editSetup(plan, setupId, (setup) => {
    const stop = Math.min(Math.max(setup.stop, found.widestStop), found.narrowestStop);
    return setup.lens === lens && setup.stop === stop ? setup : { ...setup, lens, stop };
  });
}
