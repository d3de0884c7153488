import type { Plan } from '../../core/plan/schema/plan';
import { latestWins } from '../latestWins';
import { livePlan, liveStore } from '../liveStore';
import { planStore } from '../planStore';
import { sentenceOf } from '../reasonOf';
import { reportStore } from '../reportStore';
import { cautionsStore } from './cautionsStore';
import { CautionsWorker } from './cautionsWorker';

const failed = (error: unknown): void =>
  cautionsStore.setState({
    trouble: sentenceOf('Cautions could not be looked for', error),
  });

let worker: CautionsWorker | null = null;

const asked = latestWins<Plan>(async (plan) => {
  worker ??= new CautionsWorker();
  try {
    const found = await worker.of(plan);
    cautionsStore.setState({ found, forPlan: plan, trouble: null });
  } catch (error) {
    failed(error);
  }
});

/** Whether the setup that is looked at is read, or nothing will be: until then its verdict has the processor. */
function isRead(plan: Plan): boolean {
  const { partial, partialFor, forPlan, stopped, trouble } = reportStore.getState();
  return (
    plan.setups.length === 0 ||
    forPlan === plan ||
    (partialFor === plan && partial.size > 0) ||
    stopped ||
    trouble !== null
  );
}

/** Keeps the cautions those of the plan: as it is seen while somebody looks at them, else as it is once its first setup is read. */
export function startCautions(): void {
  let last: Plan | null = null;
  const look = (): void => {
    if (!planStore.getState().opened) return;
    const { shown } = cautionsStore.getState();
    const plan = shown ? livePlan() : planStore.getState().plan;
    if (plan === last || !(shown || isRead(plan))) return;
    last = plan;
    asked.ask(plan);
  };
  planStore.subscribe((state, before) => {
    if (state.planId !== before.planId) cautionsStore.setState({ openKey: null });
    if (state.plan !== before.plan) look();
  });
  liveStore.subscribe((state, before) => {
    if (state.gesture !== before.gesture && cautionsStore.getState().shown) look();
  });
  reportStore.subscribe(look);
  cautionsStore.subscribe((state, before) => {
    if (state.shown !== before.shown) look();
  });
  look();
}
