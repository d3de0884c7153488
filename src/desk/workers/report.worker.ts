import { expose } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import { reportOf } from '../../core/report/report';
import { unpackPlan } from '../planWire';
import type { ReportApi } from './reportApi';

let held: Plan | null = null;

const api: ReportApi = {
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  read: (setupId, atSeconds) => {
    if (!held) throw new Error('report worker: asked before it held a plan');
    const { setups, notices } = reportOf(held, {
      setupIds: [setupId],
      ...(atSeconds === null ? {} : { at: atSeconds }),
    });
    const setup = setups[0];
    return setup ? { setup, notices } : null;
  },
};

expose(api);
