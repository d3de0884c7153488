import { expose } from 'comlink';
import { clearGroundSteps } from '../../core/clearance/ground/clearGround';
import { groundAt } from '../../core/clearance/ground/groundAt';
import { heightLimitSteps } from '../../core/clearance/ground/heightLimit';
import { usefulGroundSteps } from '../../core/clearance/useful/usefulGround';
import { holdModel } from '../../core/form/models/modelShelf';
import type { Plan } from '../../core/plan/schema/plan';
import { unpackPlan } from '../planWire';
import { HEARING } from '../workers/hearing';
import { stepping } from '../workers/stepping';
import type { GroundApi } from './groundApi';

let held: Plan | null = null;
const work = { clear: stepping(), limits: stepping(), useful: stepping() };

function planHeld(): Plan {
  if (!held) throw new Error('ground worker: asked before it held a plan');
  return held;
}

const api: GroundApi = {
  ...HEARING,
  holdModel,
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  clear: (question) => work.clear.taken(clearGroundSteps(planHeld(), question)),
  limits: (question) => work.limits.taken(heightLimitSteps(planHeld(), question)),
  useful: (question) => work.useful.taken(usefulGroundSteps(planHeld(), question)),
  at: (question, [x, z]) => groundAt(planHeld(), question, [x, z]),
  giveUp: (what) => work[what].giveUp(),
};

expose(api);
