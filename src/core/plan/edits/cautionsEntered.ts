import type { CautionsEntered } from '../schema/cautions';
import type { Plan } from '../schema/plan';
import { isEmpty } from './optionalLists';

/**
 * The plan with other words about its cautions. Lists and records without anything in them are left out, and so is the
 * whole where nothing is left; the same plan where nothing changes.
 */
export function withCautions(plan: Plan, entered: CautionsEntered): Plan {
  const { wind, roofLoad, wayOutMetres, waysOut, notes } = entered;
  const tidied: CautionsEntered = {
    ...(wind && { wind }),
    ...(roofLoad && !isEmpty(roofLoad) && { roofLoad }),
    ...(wayOutMetres !== undefined && { wayOutMetres }),
    ...(waysOut && !isEmpty(waysOut) && { waysOut }),
    ...(notes && !isEmpty(notes) && { notes }),
  };
  const { cautions: before, ...rest } = plan;
  if (isEmpty(tidied)) return before === undefined ? plan : rest;
  return JSON.stringify(before) === JSON.stringify(tidied) ? plan : { ...plan, cautions: tidied };
}

/**
 * The plan without notes on cautions about what is gone: whatever takes its id later is another thing. The same plan where
 * there are none.
 */
export function withoutNotesOn(plan: Plan, isGone: (id: string) => boolean): Plan {
  const before = plan.cautions?.notes ?? [];
  const notes = before.filter(({ key }) => !key.split('/').slice(1).some(isGone));
  return notes.length === before.length ? plan : withCautions(plan, { ...plan.cautions, notes });
}
