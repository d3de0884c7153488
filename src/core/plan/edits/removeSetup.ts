import type { Plan } from '../schema/plan';
import { dropEstablishing } from './dropPeople';
import { changed } from './motion';
import { freed } from './setRides';

/**
 * Takes a setup out of the plan; the letters of those after it move up, a dolly that it rode on stays where it was put,
 * and lines that it established are established by the first setup that frames both.
 */
export function removeSetup(plan: Plan, { setupId }: { readonly setupId: string }): Plan {
  const setups = plan.setups.filter((setup) => setup.id !== setupId);
  if (setups.length === plan.setups.length) return plan;
  const gear = changed(plan.gear, (entry) =>
    entry.kind === 'dolly' && entry.rides === setupId ? freed(entry) : entry,
  );
  return dropEstablishing({ ...plan, gear, setups }, (id) => id === setupId);
}
