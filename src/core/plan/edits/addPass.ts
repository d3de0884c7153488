import * as v from 'valibot';
import { castFaults } from '../castChecks';
import { type Pass, pass as passSchema } from '../schema/cast';
import type { Plan } from '../schema/plan';
import { freeId } from './freeId';
import { MOST } from './limits';
import { withPasses } from './optionalLists';

/** The plan with a list of passes that has one more or another; the plan before where that would say nonsense. */
export function takenPasses(plan: Plan, passes: Pass[], pass: Pass): Plan {
  if (pass.from === pass.to || !v.is(passSchema, pass)) return plan;
  const next = withPasses(plan, passes);
  return castFaults(next).length > 0 ? plan : next;
}

/**
 * Has a performer hand what they carry to another at a beat. The same plan for somebody or a beat that there is not,
 * for one who would hand it to themselves, and for a plan with 200 passes.
 */
export function addPass(
  plan: Plan,
  { beatId, from, to }: { readonly beatId: string; readonly from: string; readonly to: string },
): Plan {
  const passes = plan.passes ?? [];
  if (passes.length >= MOST.passes) return plan;
  const pass: Pass = { id: freeId(passes, 'pass'), beat: beatId, from, to };
  return takenPasses(plan, [...passes, pass], pass);
}
