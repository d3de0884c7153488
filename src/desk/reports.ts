import type { Plan } from '../core/plan/schema/plan';
import type { NightReport, SetupReport } from '../core/report/types';
import { assetStore } from './assets/assetStore';
import { faultsStore } from './blocking/faultsStore';
import { continuityStore } from './continuityStore';
import { latestWins } from './latestWins';
import { livePlan, liveStore } from './liveStore';
import { handsFor, NightTeam } from './nightTeam';
import { planStore } from './planStore';
import { type AskedInstant, chosenFirst, readInstant } from './readInstant';
import { sentenceOf } from './reasonOf';
import { reportStore } from './reportStore';
import { ReportWorker } from './reportWorker';
import { sessionStore } from './sessionStore';
import { WorkerEnded } from './workers/askedWorker';

const tellTrouble =
  (which: 'night' | 'instant') =>
  (error: unknown): void => {
    // Ended so that it begins anew, which is no trouble.
    if (error instanceof WorkerEnded) return;
    const sentence = sentenceOf('The report could not be made', error);
    reportStore.setState(
      which === 'night' ? { reading: null, trouble: sentence } : { instantTrouble: sentence },
    );
  };

/**
 * Reads every setup of the committed plan over its whole span, the chosen one first, and tells how far it is; then looks
 * what of all that is lost in the dark. All hands share in both.
 */
async function readNight(team: NightTeam, plan: Plan, isLatest: () => boolean): Promise<void> {
  const ids = chosenFirst(plan);
  const of = ids.length;
  const found = new Map<string, SetupReport>();
  const tellFound = (): void =>
    reportStore.setState({
      reading: { done: found.size, of },
      partial: new Map(ids.flatMap((id) => entryOf(found, id))),
    });
  reportStore.setState({
    reading: { done: 0, of },
    partial: new Map(),
    partialFor: plan,
    stopped: false,
    trouble: null,
  });
  // Some tens of milliseconds: whoever mends a walk sees at once that it is mended.
  const faults = await team.first.blockingFaults(plan);
  if (!isLatest()) return;
  faultsStore.setState({ faults, forPlan: plan });
  await team.shareOut(ids, String, async (hand, setupId) => {
    const setup = await hand.read(plan, setupId, null);
    if (!isLatest()) return false;
    if (!setup) return true;
    found.set(setupId, setup);
    tellFound();
    if (setupId !== ids[0]) return true;
    // Once the setup that is looked at is read: how it cuts with the others is soon found, the others take longer.
    const continuity = await hand.continuity(plan);
    if (!isLatest()) return false;
    if (continuity) continuityStore.setState({ ...continuity, forPlan: plan });
    return true;
  });
  if (!isLatest()) return;
  // What is seen is told already, and what of it is lost in the dark says so then; only notices and outcomes wait.
  await team.shareOut(
    [...found.values()],
    ({ id }) => id,
    async (hand, seen) => {
      const dark = await hand.darken(plan, seen);
      if (!isLatest()) return false;
      if (!dark) return true;
      found.set(seen.id, dark);
      tellFound();
      return true;
    },
  );
  if (!isLatest()) return;
  const notices = await team.first.notices(plan);
  if (!isLatest()) return;
  const night: NightReport = {
    title: plan.title,
    setups: plan.setups.flatMap(({ id }) => found.get(id) ?? []),
    notices,
  };
  reportStore.setState({ night, forPlan: plan, reading: null });
}

/** What is known by an id, as a map takes it; none where nothing is. */
function entryOf<Value>(
  known: ReadonlyMap<string, Value>,
  id: string,
): readonly (readonly [string, Value])[] {
  const value = known.get(id);
  return value === undefined ? [] : [[id, value]];
}

let stopNight: (() => void) | null = null;

/** Stops the reading of the night, and of instants but the chosen setup's; what is known stays, the next edit reads again. */
export function stopReading(): void {
  stopNight?.();
  reportStore.setState({ reading: null, stopped: true });
}

let readAnew: (() => void) | null = null;

/** Ends the workers, whatever they do, and reads the plan with new ones. */
export const readAgain = (): void => readAnew?.();

/** The workers that have not been heard of for long while they were waited for: the hands of the night by number. */
const silent = new Set<number | 'instant'>();
const tellSilence =
  (which: number | 'instant') =>
  (isSilent: boolean): void => {
    if (isSilent) silent.add(which);
    else silent.delete(which);
    reportStore.setState({ silent: silent.size > 0 });
  };

/**
 * Starts two workers, one for the night and one for the instant, and keeps asking them as the stores change. While nobody
 * asks about an instant its worker takes part in the night: it has the same code warm already. So do others, where there
 * are more cores.
 */
export function startReports(): void {
  const instantWorker = new ReportWorker(tellSilence('instant'));
  const team = new NightTeam(
    [new ReportWorker(tellSilence(0)), instantWorker],
    (place) => new ReportWorker(tellSilence(place)),
    handsFor(navigator.hardwareConcurrency),
    () => liveStore.getState().gesture === null && !liveStore.getState().playing,
  );
  const night = latestWins<Plan>((plan, isLatest) =>
    readNight(team, plan, isLatest).catch(tellTrouble('night')),
  );
  const instant = latestWins<AskedInstant>((asked, isLatest) =>
    readInstant(instantWorker, asked, isLatest).catch(tellTrouble('instant')),
  );
  stopNight = () => {
    night.drop();
    team.giveUp();
  };

  const askInstant = (): void => {
    const { seconds, gesture } = liveStore.getState();
    const { plan } = planStore.getState();
    // The others are wanted while they change under a hand, and until the night is read.
    instant.ask({
      plan: livePlan(),
      seconds,
      all: gesture !== null || reportStore.getState().forPlan !== plan,
    });
  };
  const askNight = (): void => {
    reportStore.setState({ stopped: false });
    team.giveUp();
    night.ask(planStore.getState().plan);
  };
  readAnew = () => {
    team.startAnew();
    askInstant();
    askNight();
  };

  planStore.subscribe((state, before) => {
    if (state.plan === before.plan) return;
    // An edit keeps what was found until it is found anew; another plan has nothing of it.
    if (state.documentNumber !== before.documentNumber)
      reportStore.setState({ night: null, forPlan: null, partial: new Map(), partialFor: null, live: null });
    askInstant();
    askNight();
  });
  liveStore.subscribe((state, before) => {
    if (state.seconds !== before.seconds || state.gesture !== before.gesture) askInstant();
  });
  sessionStore.subscribe((state, before) => {
    if (state.setupId !== before.setupId) askInstant();
  });
  assetStore.subscribe((state, before) => {
    if (state.changes === before.changes || !planStore.getState().opened) return;
    askInstant();
    askNight();
  });
  if (planStore.getState().opened) {
    askInstant();
    askNight();
  }
}
