import type { Plan } from '../schema/plan';
import { keptOf, withLines } from './optionalLists';

/** Takes a line out. */
export const removeLine = (plan: Plan, { lineId }: { readonly lineId: string }): Plan =>
  plan.lines
    ? withLines(
        plan,
        keptOf(plan.lines, ({ id }) => id !== lineId),
      )
    : plan;
