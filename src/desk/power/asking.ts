import { type Remote, wrap } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import { latestWins } from '../latestWins';
import { livePlan, liveStore } from '../liveStore';
import { planStore } from '../planStore';
import { reasonOf } from '../reasonOf';
import { PlanLine } from '../workers/planLine';
import type { ConnectAnswer, PowerApi } from './powerApi';
import { powerStore } from './powerStore';

interface Asked {
  readonly api: Remote<PowerApi>;
  readonly line: PlanLine;
}

function failed(error: unknown): void {
  const why = reasonOf(error);
  powerStore.setState({ connecting: false, trouble: `The power could not be worked out: ${why}` });
}

function start(): Asked {
  const worker = new Worker(new URL('./power.worker.ts', import.meta.url), { type: 'module' });
  // A worker that cannot be started never answers.
  worker.addEventListener('error', (event) => failed(new Error(event.message || 'the worker did not start')));
  const api = wrap<PowerApi>(worker);
  return { api, line: new PlanLine({ hold: api.hold, holdModel: api.holdModel }) };
}

let reading: Asked | null = null;
/** Ways take longer than sums: they have a worker of their own, so that amps follow a hand meanwhile. */
let connecting: Asked | null = null;

const powers = latestWins<Plan>(async (plan, isLatest) => {
  try {
    reading ??= start();
    const { api, line } = reading;
    const answer = await line.about(plan, () => api.power());
    const isCommitted = planStore.getState().plan === plan;
    if (isLatest())
      powerStore.setState({ answer, trouble: null, ...(isCommitted ? { settled: answer } : {}) });
  } catch (error) {
    if (isLatest()) failed(error);
  }
});

/** Keeps the power worked out for the plan as it is seen, as long as somebody looks at it; the function that comes back ends that. */
export function followPower(): () => void {
  let asked: Plan | null = null;
  const ask = (): void => {
    const plan = livePlan();
    if (plan === asked) return;
    asked = plan;
    powers.ask(plan);
  };
  powerStore.setState({ shown: true });
  ask();
  const leaves = [planStore.subscribe(ask), liveStore.subscribe(ask)];
  return () => {
    for (const leave of leaves) leave();
    powers.drop();
    powerStore.setState({ shown: false, stopId: null });
  };
}

/** Looks for what a cord to all that has none would be, for the committed plan; null where that could not be worked out. */
export async function askConnection(): Promise<ConnectAnswer | null> {
  const { plan } = planStore.getState();
  const known = powerStore.getState().connection;
  if (known?.plan === plan) return known;
  powerStore.setState({ connecting: true, connection: null, trouble: null });
  try {
    connecting ??= start();
    const { api, line } = connecting;
    const answer = await line.about(plan, () => api.connect());
    powerStore.setState({ connecting: false, connection: { ...answer, plan } });
    return answer;
  } catch (error) {
    failed(error);
    return null;
  }
}
