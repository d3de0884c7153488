import * as v from 'valibot';
import { type Lens, lens as lensSchema } from '../schema/kit';
import type { Plan } from '../schema/plan';
import { setupFaults } from '../setupChecks';
import { MOST } from './limits';
import { putEntry } from './putEntry';

/**
 * Puts a lens into the plan's kit, in the place of one with its id or after the others. A setup that looks through it
 * at a stop which it no longer has takes its nearest. What the schema refuses changes nothing.
 */
export function setKitLens(plan: Plan, { lens }: { readonly lens: Lens }): Plan {
  if (!v.is(lensSchema, lens) || lens.narrowestStop < lens.widestStop) return plan;
  const lenses = putEntry(plan.kit.lenses, lens, MOST.lenses);
  if (lenses === plan.kit.lenses) return plan;
  const setups = plan.setups.map((setup) => {
    if (setup.lens !== lens.id) return setup;
    const stop = Math.min(Math.max(setup.stop, lens.widestStop), lens.narrowestStop);
    return stop === setup.stop ? setup : { ...setup, stop };
  });
  const isSame = setups.every((setup, k) => setup === plan.setups[k]);
  const changed = { ...plan, kit: { ...plan.kit, lenses }, setups: isSame ? plan.setups : setups };
  return setupFaults(changed).length > 0 ? plan : changed;
}
