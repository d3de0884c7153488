import { isBetter, type Valuer, type Worth } from './worth';

/** How many jobs are timed in all before a search ends: some seconds. */
const MOST_ADVANCES = 4_000_000;
/** So many shakes in a row that lead to nothing better end it too. */
const MOST_SHAKES = 60;
/** Orders between two steps. */
const STEP_ORDERS = 1000;
/** As many jobs as are moved together. */
const LONGEST_RUN = 3;

/** How many whole numbers 32 bits hold. */
const WORDS = 0x1_0000_0000;

/** Whole numbers below a bound, the same at every run: x → 1664525 x + 1013904223 on 32 bits; from memory. */
function drawer(): (below: number) => number {
  let state = 20_261_127;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / WORDS) * below);
  };
}

/** An order with a run of jobs at another place. */
function moved(order: readonly number[], from: number, length: number, to: number): number[] {
  const run = order.slice(from, from + length);
  const rest = [...order.slice(0, from), ...order.slice(from + length)];
  return [...rest.slice(0, to), ...run, ...rest.slice(to)];
}

/** A change of an order of so many jobs: a run moved, or two jobs swapped. */
type Turn = (order: readonly number[]) => number[];

/** Every change that is one run or one pair of jobs. */
function* turnsOf(count: number): Generator<Turn, void, void> {
  for (let length = 1; length <= Math.min(LONGEST_RUN, count - 1); length += 1)
    for (let from = 0; from + length <= count; from += 1)
      for (let to = 0; to + length <= count; to += 1)
        if (to !== from) yield (order) => moved(order, from, length, to);
  for (let a = 0; a < count; a += 1)
    for (let b = a + 2; b < count; b += 1)
      yield (order) => {
        const swapped = [...order];
        [swapped[a], swapped[b]] = [order[b], order[a]];
        return swapped;
      };
}

/** The best so far of a search, and how much of it is done, 0..1. */
export interface SearchStep {
  readonly order: readonly number[];
  readonly worth: Worth;
  readonly done: number;
}

/**
 * A good order where there are too many for the best: downhill from the order that there is, then again and again from the
 * best one shaken. The same at every run. Yields the best so far; it can be left at any step.
 */
export function* searchSteps(
  valuer: Valuer,
  start: readonly number[] = valuer.work.order,
  mostAdvances = MOST_ADVANCES,
): Generator<SearchStep, SearchStep, void> {
  const draw = drawer();
  const count = start.length;
  let left = mostAdvances;
  const timed = (order: readonly number[]): Worth => {
    left -= count;
    return valuer.worth(order);
  };
  let best: { readonly order: readonly number[]; readonly worth: Worth } = {
    order: start,
    worth: timed(start),
  };
  const step = (): SearchStep => ({ ...best, done: Math.min(1, 1 - left / mostAdvances) });
  let at = best;
  for (let shakes = 0; count > 1 && left > 0 && shakes < MOST_SHAKES; ) {
    let improved = true;
    let tried = 0;
    while (improved && left > 0) {
      improved = false;
      for (const turn of turnsOf(count)) {
        const order = turn(at.order);
        const worth = timed(order);
        if (isBetter(worth, at.worth)) {
          at = { order, worth };
          improved = true;
        }
        if (left <= 0) break;
        tried += 1;
        if (tried % STEP_ORDERS === 0) yield step();
      }
      if (isBetter(at.worth, best.worth)) [best, shakes] = [at, -1];
      yield step();
    }
    shakes += 1;
    let order = [...best.order];
    for (let k = 0; k < 3; k += 1) {
      const length = 1 + draw(Math.min(LONGEST_RUN, count - 1));
      order = moved(order, draw(count - length + 1), length, draw(count - length + 1));
    }
    at = { order, worth: timed(order) };
  }
  return { ...best, done: 1 };
}
