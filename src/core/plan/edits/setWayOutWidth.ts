import * as v from 'valibot';
import { cautions } from '../schema/cautions';
import type { Plan } from '../schema/plan';
import { withCautions } from './cautionsEntered';

/** Sets how wide the way out is kept, metres, or, with null, as it commonly is. What the schema refuses changes nothing. */
export function setWayOutWidth(plan: Plan, { metres }: { readonly metres: number | null }): Plan {
  if (metres !== null && !v.is(cautions, { wayOutMetres: metres })) return plan;
  const { wayOutMetres: _, ...rest } = plan.cautions ?? {};
  return withCautions(plan, metres === null ? rest : { ...rest, wayOutMetres: metres });
}
