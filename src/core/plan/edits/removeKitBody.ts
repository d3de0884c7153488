import { setupsWithBody } from '../kitUse';
import type { Plan } from '../schema/plan';

/** Takes a body out of the plan's kit; one that a setup uses stays. */
export function removeKitBody(plan: Plan, { id }: { readonly id: string }): Plan {
  const bodies = plan.kit.bodies.filter((body) => body.id !== id);
  if (bodies.length === plan.kit.bodies.length || setupsWithBody(plan, id).length > 0) return plan;
  return { ...plan, kit: { ...plan.kit, bodies } };
}
