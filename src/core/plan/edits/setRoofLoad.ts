import * as v from 'valibot';
import { cautions, type RoofLoad } from '../schema/cautions';
import type { Plan } from '../schema/plan';
import { withCautions } from './cautionsEntered';

/** Sets what the roof is said to carry, or, with null, takes it away. What the schema refuses changes nothing. */
export function setRoofLoad(plan: Plan, { roofLoad }: { readonly roofLoad: RoofLoad | null }): Plan {
  if (roofLoad && !v.is(cautions, { roofLoad })) return plan;
  const { roofLoad: _, ...rest } = plan.cautions ?? {};
  return withCautions(plan, roofLoad ? { ...rest, roofLoad } : rest);
}
