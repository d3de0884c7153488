import * as v from 'valibot';
import { cautions, type Forecast } from '../schema/cautions';
import type { Plan } from '../schema/plan';
import { withCautions } from './cautionsEntered';

/** Sets the wind that is forecast, or, with null, takes it away. What the schema refuses changes nothing. */
export function setForecast(plan: Plan, { wind }: { readonly wind: Forecast | null }): Plan {
  if (wind && !v.is(cautions, { wind })) return plan;
  const { wind: _, ...rest } = plan.cautions ?? {};
  return withCautions(plan, wind ? { ...rest, wind } : rest);
}
