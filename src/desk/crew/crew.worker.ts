import { expose } from 'comlink';
import { cautionsOf } from '../../core/cautions/cautions';
import { sourceLines } from '../../core/cautions/sourceLines';
import { lightThroughDusk } from '../../core/night/dusk/lightThroughDusk';
import { nightOf } from '../../core/night/nightOf';
import { packingOf } from '../../core/night/packing/packingOf';
import { spanOf } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { darkenedSteps } from '../../core/report/light/darkened';
import { powerReport } from '../../core/report/power/powerReport';
import { setupReport } from '../../core/report/setupReport';
import type { SetupReport } from '../../core/report/types';
import { inOneGo } from '../../core/units/steps';
import { HEARING } from '../workers/hearing';
import type { CrewApi } from './crewApi';
import { setupSheet } from './setupSheet';

let held: Plan | null = null;

function planHeld(): Plan {
  if (!held) throw new Error('crew worker: asked before it held a plan');
  return held;
}

const reading = (setupId: string, read: (plan: Plan, setup: Setup) => SetupReport): SetupReport | null => {
  const plan = planHeld();
  const setup = plan.setups.find(({ id }) => id === setupId);
  return setup ? read(plan, setup) : null;
};

const api: CrewApi = {
  ...HEARING,
  hold: (plan) => {
    held = plan;
  },
  night: () => {
    const plan = planHeld();
    const night = nightOf(plan);
    return { night, packing: packingOf(plan, night), dusk: lightThroughDusk(plan, 1) };
  },
  sheets: () => {
    const plan = planHeld();
    return plan.setups.map((setup) => setupSheet(plan, setup));
  },
  still: (setupId) =>
    reading(setupId, (plan, setup) =>
      setupReport(plan, setup, { briefly: true, at: spanOf(plan, setup)[0] }),
    ),
  whole: (setupId) =>
    reading(setupId, (plan, setup) => inOneGo(darkenedSteps(plan, setup, setupReport(plan, setup, 'span')))),
  power: () => powerReport(planHeld()),
  cautions: () =>
    cautionsOf(planHeld()).map((caution) => ({ ...caution, sourceLines: sourceLines(caution.sources) })),
};

expose(api);
