import type { Plan } from '../schema/plan';

/** Takes a meter away. */
export function removeProbe(plan: Plan, { id }: { readonly id: string }): Plan {
  if (!plan.probes) return plan;
  const { probes, ...rest } = plan;
  const left = probes.filter((probe) => probe.id !== id);
  if (left.length === probes.length) return plan;
  return left.length === 0 ? rest : { ...rest, probes: left };
}
