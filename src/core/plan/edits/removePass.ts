import type { Plan } from '../schema/plan';
import { keptOf, withPasses } from './optionalLists';

/** Takes a pass out: whoever had the prop keeps it. */
export const removePass = (plan: Plan, { passId }: { readonly passId: string }): Plan =>
  plan.passes
    ? withPasses(
        plan,
        keptOf(plan.passes, ({ id }) => id !== passId),
      )
    : plan;
