import { expose } from 'comlink';
import { holdModel } from '../../core/form/models/modelShelf';
import type { Plan } from '../../core/plan/schema/plan';
import { withNames } from '../../core/plan/withNames';
import { unpackPlan } from '../planWire';
import { HEARING } from '../workers/hearing';
import { connectionOf, powerAnswer } from './answers';
import type { PowerApi } from './powerApi';

let held: Plan | null = null;

function planHeld(): Plan {
  if (!held) throw new Error('power worker: asked before it held a plan');
  return withNames(held);
}

const api: PowerApi = {
  ...HEARING,
  holdModel,
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  power: () => powerAnswer(planHeld()),
  connect: () => connectionOf(planHeld()),
};

expose(api);
