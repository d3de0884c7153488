import { expose } from 'comlink';
import { continuitySteps } from '../../core/continuity/continuity';
import { coverageSteps } from '../../core/continuity/coverage';
import { makeDirtySteps } from '../../core/continuity/makeDirty';
import { holdModel, modelsAtHand } from '../../core/form/models/modelShelf';
import { spanOf } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { withNames } from '../../core/plan/withNames';
import { lensTrialSteps } from '../../core/report/lensTest';
import { allLensTries } from '../../core/report/lensTries';
import { darkenedSteps } from '../../core/report/light/darkened';
import { lightSteps } from '../../core/report/light/lightOf';
import { noticesOf } from '../../core/report/notices';
import { type Earlier, reportAgainSteps } from '../../core/report/reportAgain';
import { type Asked, setupReportSteps } from '../../core/report/setupReport';
import type { SetupReport } from '../../core/report/types';
import { toldFaults } from '../blocking/toldFaults';
import { unpackPlan } from '../planWire';
import { HEARING } from './hearing';
import { answerHighlight, answerKeyWays, answerLightNow, inLengths } from './lightAnswers';
import type { ReportApi } from './reportApi';
import { stepping } from './stepping';

let held: Plan | null = null;
/** Somebody looks at an instant while it changes: a longer reading waits for it. */
const instants = stepping();
const { taken, giveUp } = stepping(instants);

/** What was read of setups last, by id; of the largest plans not of all, so that it stays within some ten megabytes. */
const earlier = new Map<string, Earlier>();
const MOST_EARLIER_ITEMS = 20_000;

function keepEarlier(read: Earlier): void {
  const { id: own } = read.report;
  earlier.delete(own);
  earlier.set(own, read);
  let items = 0;
  for (const [id, { report: kept }] of [...earlier].reverse()) {
    items += kept.items.length;
    if (items > MOST_EARLIER_ITEMS) earlier.delete(id);
  }
}

/** Reads a setup over its span, anew only as far as it has changed since it was read here. */
async function readSpan(plan: Plan, setup: Setup): Promise<SetupReport | null> {
  // Those that it begins with: a model that comes meanwhile has it read in full the next time.
  const models = modelsAtHand();
  const report = await taken(reportAgainSteps(plan, setup, earlier.get(setup.id) ?? null));
  if (report) keepEarlier({ plan, models, report });
  return report;
}

function planHeld(): Plan {
  if (!held) throw new Error('report worker: asked before it held a plan');
  return withNames(held);
}

function instantIn(plan: Plan, setup: Setup, seconds: number): Asked {
  const [from, to] = spanOf(plan, setup);
  return { briefly: true, at: Math.min(Math.max(seconds, from), to) };
}

const api: ReportApi = {
  holdModel,
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  read: async (setupId, atSeconds) => {
    const plan = planHeld();
    const setup = plan.setups.find(({ id }) => id === setupId);
    if (!setup) return null;
    return atSeconds === null
      ? readSpan(plan, setup)
      : instants.taken(setupReportSteps(plan, setup, instantIn(plan, setup, atSeconds)));
  },
  tryLens: async (setup, tryId, atSeconds, tell) => {
    const plan = planHeld();
    const found = allLensTries(plan, setup).find(({ id }) => id === tryId);
    return found ? taken(lensTrialSteps(plan, found, atSeconds), tell) : null;
  },
  continuity: async () => {
    if (!held) return null;
    const plan = withNames(held);
    const setups = await taken(continuitySteps(plan));
    const coverage = setups && (await taken(coverageSteps(plan)));
    return setups && coverage && { setups, coverage };
  },
  light: async (setupId, seen, lengths) => {
    const plan = planHeld();
    const setup = plan.setups.find(({ id }) => id === setupId);
    if (!setup) return null;
    const report = seen ?? (await readSpan(plan, setup));
    const light = report && (await taken(lightSteps(plan, setup, report)));
    return light && inLengths(plan, setup, report, light, lengths);
  },
  darken: async (seen) => {
    const plan = planHeld();
    const setup = plan.setups.find(({ id }) => id === seen.id);
    return setup ? taken(darkenedSteps(plan, setup, seen)) : null;
  },
  lightNow: (setupId, seconds) => (held ? answerLightNow(withNames(held), setupId, seconds) : null),
  keyWays: (...asked) => answerKeyWays(planHeld(), ...asked),
  highlightAtFeet: (...asked) => answerHighlight(planHeld(), ...asked),
  makeDirty: async (setupId, asked, tell) => {
    const plan = planHeld();
    const setup = plan.setups.find(({ id }) => id === setupId);
    return setup ? taken(makeDirtySteps(plan, setup, asked), tell) : null;
  },
  blockingFaults: () => (held ? toldFaults(held) : []),
  notices: () => (held ? noticesOf(withNames(held)) : []),
  ...HEARING,
  giveUp,
};

expose(api);
