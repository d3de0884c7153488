import { expose } from 'comlink';
import { remediesFor } from '../../core/clearance/remedies/remediesFor';
import { solveSteps } from '../../core/clearance/solve/solve';
import { holdModel } from '../../core/form/models/modelShelf';
import type { Plan } from '../../core/plan/schema/plan';
import { withNames } from '../../core/plan/withNames';
import { unpackPlan } from '../planWire';
import { HEARING } from '../workers/hearing';
import { stepping } from '../workers/stepping';
import type { RemediesApi } from './remediesApi';

let held: Plan | null = null;
const { taken, giveUp } = stepping();

function planHeld(): Plan {
  if (!held) throw new Error('remedies worker: asked before it held a plan');
  return withNames(held);
}

const api: RemediesApi = {
  ...HEARING,
  holdModel,
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  remedies: async (question, tell) => taken(remediesFor(planHeld(), question), tell),
  solve: async (question, tell) => taken(solveSteps(planHeld(), question), tell),
  giveUp,
};

expose(api);
