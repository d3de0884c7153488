import type { Pass } from '../schema/cast';
import type { Plan } from '../schema/plan';
import { takenPasses } from './addPass';
import { orSame } from './motion';

/** Changes when something is handed over, by whom or to whom. What would be nonsense (see `addPass`) changes nothing. */
export function changePass(
  plan: Plan,
  { passId, patch }: { readonly passId: string; readonly patch: Partial<Omit<Pass, 'id'>> },
): Plan {
  const passes = plan.passes ?? [];
  const index = passes.findIndex(({ id }) => id === passId);
  const before = passes[index];
  if (!before) return plan;
  const pass = orSame(before, { ...before, ...patch, id: before.id });
  return pass === before ? plan : takenPasses(plan, passes.with(index, pass), pass);
}
