import type { Plan } from '../schema/plan';

/** Takes a setup out of the plan; the letters of those after it move up. */
export function removeSetup(plan: Plan, { setupId }: { readonly setupId: string }): Plan {
  const setups = plan.setups.filter((setup) => setup.id !== setupId);
  return setups.length === plan.setups.length ? plan : { ...plan, setups };
}
