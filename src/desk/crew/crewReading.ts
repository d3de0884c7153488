import type { Remote } from 'comlink';
import { createStore } from 'zustand/vanilla';
import { setupsInOrder } from '../../core/plan/nightOrder';
import type { Plan } from '../../core/plan/schema/plan';
import type { PowerReport } from '../../core/report/power/types';
import type { SetupReport } from '../../core/report/types';
import type { NightAnswer } from '../night/nightApi';
import { sentenceOf } from '../reasonOf';
import { AskedWorker } from '../workers/askedWorker';
import type { CautionInFull, CrewApi } from './crewApi';
import { crewStore } from './crewStore';
import type { SetupSheet } from './setupSheet';

/** What the worker has read of the link's plan so far. */
export interface CrewReadingState {
  /** The report of each setup as it comes: of its first instant, then of its whole move. */
  readonly setups: ReadonlyMap<string, SetupReport>;
  /** Setups whose report is of the whole move. */
  readonly whole: ReadonlySet<string>;
  /** What a crew has to know of each setup, by its id; empty until it comes. */
  readonly sheets: ReadonlyMap<string, SetupSheet>;
  /** The night with its packing list and dusk; null until they come, as the others are. */
  readonly night: NightAnswer | null;
  readonly power: PowerReport | null;
  readonly cautions: readonly CautionInFull[] | null;
  /** Why some of it does not come, as a sentence; empty while nothing is wrong. */
  readonly trouble: string;
  /** Tries for it once more; null while nothing is wrong. */
  readonly again: (() => void) | null;
}

const NOTHING: CrewReadingState = {
  setups: new Map(),
  whole: new Set(),
  sheets: new Map(),
  night: null,
  power: null,
  cautions: null,
  trouble: '',
  again: null,
};

export const crewReadingStore = createStore<CrewReadingState>()(() => NOTHING);

let worker: AskedWorker<CrewApi> | null = null;

/** Gives up the plan that is being read, and forgets what was read of it. */
export function endCrewReading(): void {
  worker?.end();
  worker = null;
  crewReadingStore.setState(NOTHING, true);
}

/** Reads a plan in a worker of its own, what is asked first first; a plan before it is given up. */
export function startCrewReading(plan: Plan): void {
  endCrewReading();
  const own = new AskedWorker<CrewApi>(
    () => new Worker(new URL('./crew.worker.ts', import.meta.url), { type: 'module' }),
    (api) => {
      const held = api.hold(plan);
      return {
        about: async (_, ask) => {
          await held;
          return ask();
        },
      };
    },
    {
      isThere: (api) => api.isThere(),
      tell: (isSilent, again) => {
        if (worker !== own) return;
        crewReadingStore.setState(
          isSilent
            ? { trouble: 'The readings have not come for a minute.', again }
            : { trouble: '', again: null },
        );
      },
    },
  );
  worker = own;
  const isOwn = (): boolean => worker === own;
  readAll((ask) => own.about(plan, ask), plan, isOwn).catch((error: unknown) => {
    if (isOwn())
      crewReadingStore.setState({
        trouble: sentenceOf('This browser could not work out the readings', error),
        again: () => startCrewReading(plan),
      });
  });
}

type Ask = <Value>(ask: (api: Remote<CrewApi>) => Promise<Value>) => Promise<Value>;

/** Which of some setups is read next: the one that is looked at, else the next of the night. */
function nextOf(left: ReadonlySet<string>): string {
  const { setupId } = crewStore.getState();
  const [first] = left;
  return setupId !== null && left.has(setupId) ? setupId : first;
}

/** Asks for what puts the cameras up, for the night, for every setup's first instant, power and cautions, then for whole moves. */
async function readAll(ask: Ask, plan: Plan, isOwn: () => boolean): Promise<void> {
  const take = (found: Partial<CrewReadingState>): void => {
    if (isOwn()) crewReadingStore.setState(found);
  };
  const takeSetup = (report: SetupReport | null): void => {
    const { setups } = crewReadingStore.getState();
    if (report) take({ setups: new Map(setups).set(report.id, report) });
  };
  const order = setupsInOrder(plan).map(({ id }) => id);
  take({ sheets: new Map((await ask((api) => api.sheets())).map((sheet) => [sheet.setupId, sheet])) });
  take({ night: await ask((api) => api.night()) });
  for (const id of order) takeSetup(await ask((api) => api.still(id)));
  take({ power: await ask((api) => api.power()) });
  take({ cautions: await ask((api) => api.cautions()) });
  const left = new Set(order);
  while (isOwn() && left.size > 0) {
    const id = nextOf(left);
    left.delete(id);
    takeSetup(await ask((api) => api.whole(id)));
    take({ whole: new Set(crewReadingStore.getState().whole).add(id) });
  }
}
