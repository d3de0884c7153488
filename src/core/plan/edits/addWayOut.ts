import type { Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { withCautions } from './cautionsEntered';
import { freeId } from './freeId';
import { MOST } from './limits';
import { tidyPoint } from './tidy';

/** Names a way out at a point of the roof. A plan with 20 of them stays as it is. */
export function addWayOut(plan: Plan, { at }: { readonly at: Point }): Plan {
  const before = plan.cautions?.waysOut ?? [];
  if (before.length >= MOST.waysOut) return plan;
  const id = freeId(before, 'way-out');
  const wayOut = { id, label: `Way out ${id.slice(8)}`, at: tidyPoint(at) };
  return withCautions(plan, { ...plan.cautions, waysOut: [...before, wayOut] });
}
