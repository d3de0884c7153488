import { expose } from 'comlink';
import { cautionsOf } from '../../core/cautions/cautions';
import { holdModel } from '../../core/form/models/modelShelf';
import type { Plan } from '../../core/plan/schema/plan';
import { withNames } from '../../core/plan/withNames';
import { unpackPlan } from '../planWire';
import { HEARING } from '../workers/hearing';
import type { CautionsApi } from './cautionsApi';

let held: Plan | null = null;

const api: CautionsApi = {
  ...HEARING,
  holdModel,
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  cautions: () => {
    if (!held) throw new Error('cautions worker: asked before it held a plan');
    return cautionsOf(withNames(held));
  },
};

expose(api);
