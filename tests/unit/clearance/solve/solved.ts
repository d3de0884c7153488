import { solveSteps } from '../../../../src/core/clearance/solve/solve';
import type { SolveAnswer, SolveQuestion } from '../../../../src/core/clearance/solve/types';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { setupReport } from '../../../../src/core/report/setupReport';
import { inOneGo } from '../../../../src/core/units/steps';
import { LOOSE } from '../remedies/remedied';

/** What a search comes to, with a tolerance that a lamp hardly ever leaves unless said otherwise. */
export const solved = (plan: Plan, question: Partial<SolveQuestion> = {}): SolveAnswer =>
  inOneGo(solveSteps(plan, { tolerance: LOOSE, ...question }));

/** By whole reports: what should keep out and is seen, as `setup item`, but what is accepted. */
export const seenIn = (plan: Plan): readonly string[] =>
  plan.setups.flatMap((setup) =>
    setupReport(plan, setup)
      .items.filter(
        ({ wish, verdict, accepted }) =>
          wish === 'keep out' && !accepted && (verdict === 'showing' || verdict === 'mirrored'),
      )
      .map(({ id }) => `${setup.id} ${id}`),
  );
