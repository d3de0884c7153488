import { inOneGo } from '../../units/steps';
import type { Demand } from '../order/demands';
import type { Work } from '../order/work';
import { exactSteps, MOST_EXACT } from './exact';
import { type SearchStep, searchSteps } from './search';
import { isBetter, Valuer, type Worth } from './worth';

/** The best so far: an order by the places of the jobs, what it is worth, and how much of the work is done, 0..1. */
export interface SuggestStep {
  readonly order: readonly number[];
  readonly worth: Worth;
  readonly done: number;
}

/** An order that is suggested. */
export interface Suggestion {
  readonly order: readonly number[];
  readonly worth: Worth;
  /** Whether no order is better; else it is the best that a search found. */
  readonly isExact: boolean;
  /** Demands that no order keeps together, of which any may be given up and the others can be kept; empty where all are kept, or where it was not found out. */
  readonly conflict: readonly Demand[];
}

/** How much of the work each part is, as it is told: an estimate. */
const SHARES = { search: 0.2, exact: 0.9 } as const;
/** How many jobs a first search times where the exact one follows. */
const FIRST_ADVANCES = 60_000;

/**
 * A smallest set of demands that no order keeps together: from all of them each is left out that the others do not need
 * to be impossible. It is smallest in that none of it can be left out, not that there is no other with fewer.
 */
function* conflictSteps(
  work: Work,
  start: readonly number[],
  share: (done: number) => SuggestStep,
): Generator<SuggestStep, Demand[], void> {
  let needed: readonly Demand[] = work.demands;
  for (const [k, demand] of work.demands.entries()) {
    const without = needed.filter((each) => each !== demand);
    const valuer = new Valuer(work, without);
    yield share(k / work.demands.length);
    // An order that is found at once saves the proof.
    if (inOneGo(searchSteps(valuer, start, FIRST_ADVANCES)).worth.late === 0) continue;
    const steps = exactSteps(valuer);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield share(k / work.demands.length);
    if (step.value.order === null && step.value.isProven) needed = without;
  }
  return [...needed];
}

/**
 * An order of the night that costs least: first that everything asked is kept, then that it ends soonest, then that
 * changing over costs least. Of up to 12 setups it is the best there is; of more, the best that a search found. Where no
 * order keeps everything, that which is least late, with demands that cannot be kept together. Some nights of 8 to 12 setups
 * with a meal, wet ground and dry have too many ways to prove it, and say so. Yields the best so far; it
 * can be left at any step.
 */
export function* suggestSteps(work: Work): Generator<SuggestStep, Suggestion, void> {
  const valuer = new Valuer(work);
  const isExact = work.jobs.length <= MOST_EXACT;
  const searching = searchSteps(valuer, work.order, isExact ? FIRST_ADVANCES : undefined);
  let found: SearchStep;
  for (let step = searching.next(); ; step = searching.next()) {
    found = step.value;
    if (step.done) break;
    yield { ...found, done: found.done * (isExact ? SHARES.search : 1) };
  }
  if (!isExact) return { order: found.order, worth: found.worth, isExact: false, conflict: [] };
  const told =
    (from: number, until: number) =>
    (done: number): SuggestStep => ({
      order: found.order,
      worth: found.worth,
      done: from + (until - from) * done,
    });
  const ofExact = told(SHARES.search, SHARES.exact);
  const exact = exactSteps(valuer, found.worth.late === 0 ? found.order : null);
  let step = exact.next();
  for (; !step.done; step = exact.next()) yield ofExact(step.value);
  const { order: best, isProven } = step.value;
  if (best) {
    const worth = valuer.worth(best);
    // Of two that are worth the same, the search's is nearer to the order that there was.
    const order = isBetter(worth, found.worth) ? best : found.order;
    return { order, worth: valuer.worth(order), isExact: isProven, conflict: [] };
  }
  if (!isProven) return { order: found.order, worth: found.worth, isExact: false, conflict: [] };
  const conflict = yield* conflictSteps(work, found.order, told(SHARES.exact, 1));
  return { order: found.order, worth: found.worth, isExact: false, conflict };
}
