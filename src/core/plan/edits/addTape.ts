import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { freeId } from './freeId';
import { MOST } from './limits';
import { tidySpot } from './tidy';

/** Lays a tape measure from one place to another, [x, z], metres. A plan with 400 of them stays as it is. */
export function addTape(plan: Plan, { from, to }: { readonly from: Spot; readonly to: Spot }): Plan {
  const tapes = plan.tapes ?? [];
  if (tapes.length >= MOST.tapes) return plan;
  return {
    ...plan,
    tapes: [...tapes, { id: freeId(tapes, 'tape'), from: tidySpot(from), to: tidySpot(to) }],
  };
}
