import type { Plan } from '../core/plan/schema/plan';
import type { SetupReport } from '../core/report/types';
import { liveStore } from './liveStore';
import { planStore } from './planStore';
import { reportStore } from './reportStore';
import type { ReportWorker } from './reportWorker';
import { sessionStore } from './sessionStore';

/** The chosen setup before all others: its answer is the one that somebody is looking at. */
export function chosenFirst(plan: Plan): readonly string[] {
  const { setupId } = sessionStore.getState();
  const ids = plan.setups.map((setup) => setup.id);
  return setupId !== null && ids.includes(setupId) ? [setupId, ...ids.filter((id) => id !== setupId)] : ids;
}

/** What the live report is asked for: a plan at an instant, and whether every setup matters or the chosen one alone. */
export interface AskedInstant {
  readonly plan: Plan;
  readonly seconds: number;
  readonly all: boolean;
}

/** Puts one setup's instant among those known, the chosen setup first; those of setups that are gone fall out. */
function keepInstant(plan: Plan, fresh: SetupReport): void {
  const known = new Map((reportStore.getState().live ?? []).map((setup) => [setup.id, setup]));
  known.set(fresh.id, fresh);
  reportStore.setState({ live: chosenFirst(plan).flatMap((id) => known.get(id) ?? []) });
}

let served = 0;
/** While it plays, marks follow so much later at most: each answer costs the page a frame. By eye, no source. */
const PLAYING_REST_MS = 200;

/** Whether somebody stopped the reading: then only what is dragged is followed in every setup. */
const isStopped = (): boolean => reportStore.getState().stopped && liveStore.getState().gesture === null;

/**
 * Reads the chosen setup at its instant, then the others as long as nothing newer is asked and nobody stops the reading.
 * The others are taken in turn from one request to the next, so that all of them move along in a drag that never pauses.
 */
export async function readInstant(
  worker: Pick<ReportWorker, 'read'>,
  asked: AskedInstant,
  isLatest: () => boolean,
): Promise<void> {
  const { plan, seconds, all } = asked;
  const { documentNumber } = planStore.getState();
  // A late answer serves a drag, but not another plan, whose setups may have the same ids.
  const keep = (fresh: SetupReport): void => {
    if (planStore.getState().documentNumber === documentNumber) keepInstant(plan, fresh);
  };
  const [chosen, ...others] = chosenFirst(plan);
  if (chosen === undefined) {
    reportStore.setState({ live: [], instantTrouble: null });
    return;
  }
  const own = await worker.read(plan, chosen, seconds);
  if (reportStore.getState().instantTrouble !== null) reportStore.setState({ instantTrouble: null });
  if (own) keep(own);
  if (liveStore.getState().playing) await new Promise((resolve) => setTimeout(resolve, PLAYING_REST_MS));
  if (!all) return;
  for (let count = 0; count < others.length && !isStopped(); count += 1) {
    const next = await worker.read(plan, others[served % others.length] ?? chosen, seconds);
    served += 1;
    if (next) keep(next);
    if (!isLatest()) return;
  }
}
