import type { Plan } from '../schema/plan';
import { withCautions } from './cautionsEntered';

/** Takes a way out away. */
export function removeWayOut(plan: Plan, { id }: { readonly id: string }): Plan {
  const before = plan.cautions?.waysOut ?? [];
  const waysOut = before.filter((each) => each.id !== id);
  return waysOut.length === before.length ? plan : withCautions(plan, { ...plan.cautions, waysOut });
}
