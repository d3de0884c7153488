import { setupsWithLens } from '../kitUse';
import type { Plan } from '../schema/plan';

/** Takes a lens out of the plan's kit; one that a setup looks through stays. */
export function removeKitLens(plan: Plan, { id }: { readonly id: string }): Plan {
  const lenses = plan.kit.lenses.filter((lens) => lens.id !== id);
  if (lenses.length === plan.kit.lenses.length || setupsWithLens(plan, id).length > 0) return plan;
  return { ...plan, kit: { ...plan.kit, lenses } };
}
