import { expose } from 'comlink';
import { continuitySteps } from '../../core/continuity/continuity';
import { coverageOf } from '../../core/continuity/coverage';
import { holdModel } from '../../core/form/models/modelShelf';
import { spanOf } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { lensTrialSteps } from '../../core/report/lensTest';
import { allLensTries } from '../../core/report/lensTries';
import { noticesOf } from '../../core/report/notices';
import { type Asked, setupReportSteps } from '../../core/report/setupReport';
import { unpackPlan } from '../planWire';
import type { ReportApi } from './reportApi';

/** How long the worker reads before it looks whether it should give up. */
const LOOK_UP_EVERY_MS = 20;

let held: Plan | null = null;
let readings = 0;

/** Lets the messages in that came meanwhile. */
const messagesIn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

function instantIn(plan: Plan, setup: Setup, seconds: number): Asked {
  const [from, to] = spanOf(plan, setup);
  return { briefly: true, at: Math.min(Math.max(seconds, from), to) };
}

/** Takes the steps to their end, and looks up now and then; null when it was given up, or something newer was asked. */
async function taken<Value>(
  steps: Generator<number, Value, void>,
  tell: (share: number) => void = () => undefined,
): Promise<Value | null> {
  readings += 1;
  const own = readings;
  let lookedUp = performance.now();
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    if (performance.now() - lookedUp < LOOK_UP_EVERY_MS) continue;
    tell(step.value);
    await messagesIn();
    if (own !== readings) return null;
    lookedUp = performance.now();
  }
}

const api: ReportApi = {
  holdModel,
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  read: async (setupId, atSeconds) => {
    if (!held) throw new Error('report worker: asked before it held a plan');
    const setup = held.setups.find(({ id }) => id === setupId);
    if (!setup) return null;
    return taken(
      setupReportSteps(held, setup, atSeconds === null ? 'span' : instantIn(held, setup, atSeconds)),
    );
  },
  tryLens: async (setup, tryId, atSeconds, tell) => {
    if (!held) throw new Error('report worker: asked before it held a plan');
    const found = allLensTries(held, setup).find(({ id }) => id === tryId);
    return found ? taken(lensTrialSteps(held, found, atSeconds), tell) : null;
  },
  continuity: async () => {
    if (!held) return null;
    const plan = held;
    const setups = await taken(continuitySteps(plan));
    return setups && { setups, coverage: coverageOf(plan) };
  },
  notices: () => (held ? noticesOf(held) : []),
  giveUp: () => {
    readings += 1;
  },
};

expose(api);
