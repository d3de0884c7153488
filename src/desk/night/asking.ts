import { proxy } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import { latestWins } from '../latestWins';
import { planStore } from '../planStore';
import { sentenceOf } from '../reasonOf';
import { nightStore } from './nightStore';
import { NightWorker } from './nightWorker';

const failed = (error: unknown): void =>
  nightStore.setState({
    seeking: null,
    darkening: null,
    trouble: sentenceOf('The night could not be worked out', error),
  });

let worker: NightWorker | null = null;
/** Started by the first question: who never looks at the night has none. */
function theWorker(): NightWorker {
  worker ??= new NightWorker('The night');
  return worker;
}

const nights = latestWins<Plan>(async (plan, isLatest) => {
  try {
    const answer = await theWorker().about(plan, (api) => api.night());
    if (isLatest()) nightStore.setState({ answer: { ...answer, plan }, trouble: null });
  } catch (error) {
    if (isLatest()) failed(error);
  }
});

/** Keeps the night worked out for the committed plan as long as somebody looks at it; the function that comes back ends that. */
export function followNight(): () => void {
  const ask = (): void => {
    const { plan } = planStore.getState();
    if (nightStore.getState().answer?.plan !== plan) nights.ask(plan);
  };
  ask();
  const leave = planStore.subscribe((state, before) => {
    if (state.plan !== before.plan) ask();
  });
  return () => {
    leave();
    nights.drop();
  };
}

let search = 0;

/** Looks for the order that costs least; one that is looked for already is given up. */
export async function suggestOrder(): Promise<void> {
  search += 1;
  const own = search;
  const isLatest = (): boolean => own === search;
  const { plan } = planStore.getState();
  nightStore.setState({ seeking: { plan, order: [], done: 0 }, suggestion: null, trouble: null });
  try {
    const answer = await theWorker().about(plan, (api) =>
      api.suggest(
        proxy((progress) => {
          if (isLatest()) nightStore.setState({ seeking: { ...progress, plan } });
        }),
      ),
    );
    if (!isLatest()) return;
    search += 1;
    nightStore.setState({
      seeking: null,
      suggestion: answer && { ...answer, plan, isStopped: false },
    });
  } catch (error) {
    if (isLatest()) failed(error);
  }
}

/** Stops looking; the best order so far stays as what is suggested. */
export function stopSuggesting(): void {
  const { seeking } = nightStore.getState();
  if (!seeking) return;
  search += 1;
  worker?.giveUpSuggesting();
  const { plan, order } = seeking;
  nightStore.setState({
    seeking: null,
    suggestion: order.length > 0 ? { plan, order, isExact: false, conflict: '', isStopped: true } : null,
  });
}

/** Puts a suggestion away. */
export const forgetSuggestion = (): void => nightStore.setState({ suggestion: null });

/** Looks long, so it has a worker that can be ended in the middle of a step. */
let darkWorker: NightWorker | null = null;

/** Works out from when each thing that shows is lost in the dark. */
export async function findDark(): Promise<void> {
  darkWorker?.end();
  const own = new NightWorker('The look for the dark');
  darkWorker = own;
  const { plan } = planStore.getState();
  nightStore.setState({ darkening: 0, trouble: null });
  try {
    const found = await own.about(plan, (api) =>
      api.darkFrom(
        proxy((share) => {
          if (darkWorker === own) nightStore.setState({ darkening: share });
        }),
      ),
    );
    if (darkWorker !== own) return;
    nightStore.setState({ darkening: null, dark: found && { plan, found } });
  } catch (error) {
    if (darkWorker === own) failed(error);
  } finally {
    if (darkWorker === own) darkWorker = null;
    own.end();
  }
}

/** Ends the look for the dark. */
export function stopDark(): void {
  darkWorker?.end();
  darkWorker = null;
  nightStore.setState({ darkening: null });
}
