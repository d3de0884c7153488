import type { Plan } from '../schema/plan';
import { withoutNotesOn } from './cautionsEntered';
import { dropEstablishing } from './dropPeople';
import { changed } from './motion';
import { nightWithoutSetups } from './nightRecord';
import { freed } from './setRides';
import { withoutShows } from './shows';

/**
 * Takes a setup out of the plan; the letters of those after it move up, a dolly that it rode on stays where it was put,
 * lines that it established are established by the first setup that frames both, what was let show in it is not, and the
 * night does without it. Notes on cautions about it go too.
 */
export function removeSetup(plan: Plan, { setupId }: { readonly setupId: string }): Plan {
  const setups = plan.setups.filter((setup) => setup.id !== setupId);
  if (setups.length === plan.setups.length) return plan;
  const gear = changed(plan.gear, (entry) =>
    entry.kind === 'dolly' && entry.rides === setupId ? freed(entry) : entry,
  );
  const left = nightWithoutSetups(withoutShows({ ...plan, gear, setups }, setupId), (id) => id === setupId);
  return dropEstablishing(
    withoutNotesOn(left, (id) => id === setupId),
    (id) => id === setupId,
  );
}
