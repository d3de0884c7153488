import { type Schedule, scheduleOf } from '../order/schedule';
import { advance, beginningOfWork } from '../order/walk';
import type { Work } from '../order/work';
import { Valuer } from './worth';

/** Setups to leave out so that a night ends in time. */
export interface Drop {
  /** By their places among the plan's setups. */
  readonly jobs: readonly number[];
  readonly schedule: Schedule;
}

/** More setups than this are left out one by one, not tried in every set. */
const MOST_TRIED = 14;

const shotMinutes = (work: Work, jobs: readonly number[]): number =>
  jobs.reduce((sum, job) => sum + work.jobs[job].shoot, 0);

/** All sets of so many of a list, in the list's order. */
function* setsOf(list: readonly number[], many: number): Generator<number[], void, void> {
  if (many === 0) {
    yield [];
    return;
  }
  for (let k = 0; k <= list.length - many; k += 1)
    for (const rest of setsOf(list.slice(k + 1), many - 1)) yield [list[k], ...rest];
}

const without = (order: readonly number[], jobs: readonly number[]): readonly number[] =>
  order.filter((job) => !jobs.includes(job));

/** The set of setups that ends in time with the least that is not shot; null where none does. */
function leastOf(
  valuer: Valuer,
  order: readonly number[],
  lastBy: number,
  sets: Iterable<number[]>,
): readonly number[] | null {
  const { work } = valuer;
  let best: readonly number[] | null = null;
  for (const jobs of sets) {
    if (best && shotMinutes(work, jobs) >= shotMinutes(work, best)) continue;
    if (valuer.worth(without(order, jobs)).time <= lastBy) best = jobs;
  }
  return best;
}

/** The job whose absence ends the night soonest, of several the first, and when its last shot has ended then. */
function soonestWithout(
  valuer: Valuer,
  order: readonly number[],
): { readonly job: number; readonly time: number } {
  const { work, bounds } = valuer;
  let [at, last] = [beginningOfWork(work), -1];
  let soonest = { job: -1, time: Number.POSITIVE_INFINITY };
  for (const [place, job] of order.entries()) {
    // What is before the job goes as it went: only the rest of the night is gone through again.
    const { time } = valuer.after(order, place + 1, last, at);
    if (time < soonest.time) soonest = { job, time };
    at = advance(work, bounds, at, last, job);
    last = job;
  }
  return soonest;
}

/** Setups that go one after the other, whichever ends the night soonest, until it is in time; null where it never is. */
function oneByOne(valuer: Valuer, order: readonly number[], lastBy: number): readonly number[] | null {
  const gone: number[] = [];
  for (let left = order; left.length > 0; ) {
    const { job, time } = soonestWithout(valuer, left);
    gone.push(job);
    left = without(left, [job]);
    if (time <= lastBy) return order.filter((each) => gone.includes(each));
  }
  return null;
}

/** The fewest setups; of as few, those with the least minutes of shooting. */
function fewest(valuer: Valuer, order: readonly number[], lastBy: number): readonly number[] | null {
  for (let many = 1; many <= order.length; many += 1) {
    const found = leastOf(valuer, order, lastBy, setsOf(order, many));
    if (found) return found;
  }
  return null;
}

/**
 * The fewest setups to leave out of an order so that it wraps by a minute of the night; of as few, those with the least
 * minutes of shooting. Beyond 14 setups one after the other goes, whichever ends the night soonest. Null where the night
 * is in time as it is, or where nothing would make it so.
 */
export function dropFor(work: Work, by: number, order: readonly number[] = work.order): Drop | null {
  const valuer = new Valuer(work);
  const lastBy = by - work.strikeMinutes;
  if (valuer.worth(order).time <= lastBy) return null;
  const jobs = order.length <= MOST_TRIED ? fewest(valuer, order, lastBy) : oneByOne(valuer, order, lastBy);
  return jobs && { jobs, schedule: scheduleOf(work, without(order, jobs)) };
}
