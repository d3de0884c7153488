import { expose } from 'comlink';
import { holdModel } from '../../core/form/models/modelShelf';
import { darkFromSteps } from '../../core/night/dusk/darkFrom';
import { lightThroughDusk } from '../../core/night/dusk/lightThroughDusk';
import { nightOf } from '../../core/night/nightOf';
import { workOf } from '../../core/night/order/work';
import { packingOf } from '../../core/night/packing/packingOf';
import { suggestSteps } from '../../core/night/suggest/suggest';
import { conflictSentence } from '../../core/night/words/demandWords';
import type { Plan } from '../../core/plan/schema/plan';
import { withNames } from '../../core/plan/withNames';
import { unpackPlan } from '../planWire';
import { HEARING } from '../workers/hearing';
import { stepping } from '../workers/stepping';
import type { NightApi } from './nightApi';

let held: Plan | null = null;
const suggesting = stepping();
const darkening = stepping();

function planHeld(): Plan {
  if (!held) throw new Error('night worker: asked before it held a plan');
  return withNames(held);
}

const api: NightApi = {
  ...HEARING,
  holdModel,
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  night: () => {
    const plan = planHeld();
    const night = nightOf(plan);
    return { night, packing: packingOf(plan, night), dusk: lightThroughDusk(plan, 1) };
  },
  suggest: async (tell) => {
    const plan = planHeld();
    const work = workOf(plan);
    const found = await suggesting.taken(suggestSteps(work), ({ order, done }) => tell({ order, done }));
    if (!found) return null;
    const { order, isExact, conflict } = found;
    return { order, isExact, conflict: conflictSentence(plan, work.clock, conflict) };
  },
  darkFrom: (tell) => darkening.taken(darkFromSteps(planHeld()), tell),
  giveUpSuggesting: suggesting.giveUp,
};

expose(api);
