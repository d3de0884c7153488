import type { Plan } from '../schema/plan';

/** Takes a tape measure up. */
export function removeTape(plan: Plan, { id }: { readonly id: string }): Plan {
  if (!plan.tapes) return plan;
  const { tapes, ...rest } = plan;
  const left = tapes.filter((tape) => tape.id !== id);
  if (left.length === tapes.length) return plan;
  return left.length === 0 ? rest : { ...rest, tapes: left };
}
