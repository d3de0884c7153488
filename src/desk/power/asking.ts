import type { Plan } from '../../core/plan/schema/plan';
import { latestWins } from '../latestWins';
import { livePlan, liveStore } from '../liveStore';
import { planStore } from '../planStore';
import { sentenceOf } from '../reasonOf';
import { AskedWorker } from '../workers/askedWorker';
import { PlanLine } from '../workers/planLine';
import { silenceOf } from '../workers/silence';
import type { ConnectAnswer, PowerApi } from './powerApi';
import { powerStore } from './powerStore';

function failed(error: unknown): void {
  powerStore.setState({ connecting: false, trouble: sentenceOf('The power could not be worked out', error) });
}

const newWorker = (what: string): AskedWorker<PowerApi> =>
  new AskedWorker<PowerApi>(
    () => new Worker(new URL('./power.worker.ts', import.meta.url), { type: 'module' }),
    ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
    { isThere: (api) => api.isThere(), tell: silenceOf(what) },
  );

let reading: AskedWorker<PowerApi> | null = null;
/** Ways take longer than sums: they have a worker of their own, so that amps follow a hand meanwhile. */
let connecting: AskedWorker<PowerApi> | null = null;

const powers = latestWins<Plan>(async (plan, isLatest) => {
  try {
    reading ??= newWorker('The power');
    const answer = await reading.about(plan, (api) => api.power());
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
    connecting ??= newWorker('The look for cords');
    const answer = await connecting.about(plan, (api) => api.connect());
    powerStore.setState({ connecting: false, connection: { ...answer, plan } });
    return answer;
  } catch (error) {
    failed(error);
    return null;
  }
}
