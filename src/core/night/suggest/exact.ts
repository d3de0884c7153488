import { advance, beginningOfWork, type Progress } from '../order/walk';
import type { Job, Work } from '../order/work';
import { isBetter, type Valuer, type Worth } from './worth';

/** More jobs than this are not tried exactly: the sets of thirteen take more memory than a phone lends. */
export const MOST_EXACT = 12;

/** One way to have done a set of jobs: how far the night has come, and the way before its last job. */
interface Label extends Progress {
  readonly job: number;
  readonly before: Label | null;
}

/** As many ways as are kept apart by their meal: with more a night is looked through without, and nothing is proven. */
const MOST_WAYS = 30_000;

/** An order and whether it is proven to be the best; without an order, whether it is proven that none keeps all demands. */
interface Exact {
  readonly order: readonly number[] | null;
  readonly isProven: boolean;
}

/** Whether one way is better in no respect than another that has done the same jobs. */
const isNoWorse = (a: Label, b: Label, countsWettings: boolean): boolean =>
  a.time <= b.time &&
  a.changing <= b.changing &&
  a.wetUntil <= b.wetUntil &&
  (!countsWettings || a.wettings <= b.wettings);

/** The jobs of a kind of ground, a bit each. */
const onGround = ({ jobs }: Work, ground: Job['ground']): number =>
  jobs.reduce((bits, job, k) => (job.ground === ground ? bits | (1 << k) : bits), 0);

/**
 * Says of two ways of doing a set of jobs whether the first, no worse in all else, has its meal so that it is never later
 * either. While ground dries a meal costs nothing, so the earlier of two may miss what the later one has. Null where a
 * night has no meal, or no ground that dries.
 */
function mealsOf(work: Work): ((set: number, a: Label, b: Label) => boolean) | null {
  const { mealBy, mealMinutes, driesMinutes } = work;
  const [wet, dry] = [onGround(work, 'wet'), onGround(work, 'dry')];
  if (mealMinutes === 0 || driesMinutes === 0 || wet === 0 || dry === 0) return null;
  return (set, a, b) => {
    if (a.hasEaten) return true;
    if (b.hasEaten) return b.time >= mealBy + mealMinutes;
    const isWetYet = (wet & ~set) !== 0 || b.wetUntil + driesMinutes > b.time;
    const mayWait = (dry & ~set) !== 0 && isWetYet;
    return !mayWait || (a.time === b.time && a.wetUntil === b.wetUntil);
  };
}

function orderOf(label: Label): number[] {
  const order: number[] = [];
  for (let at: Label | null = label; at; at = at.before) order.unshift(at.job);
  return order;
}

/** What each job takes at least, minutes, with the shortest way to it. */
function leastOwn({ work: { jobs, legs } }: Valuer): readonly number[] {
  const shortest = jobs.map((_, to) =>
    jobs.length < 2 ? 0 : Math.min(...jobs.flatMap((__, from) => (from === to ? [] : [legs[from][to]]))),
  );
  return jobs.map(({ rig, light, rehearse, shoot }, k) => shortest[k] + rig + light + rehearse + shoot);
}

/**
 * The best order that keeps all demands, by sets of jobs done and the last of them (Held and Karp's, with every way kept
 * that no other way to the same set and last job is better than in all respects), and without what can no longer be in time
 * or better than the best order known. Yields the done share, 0..1.
 * @param known an order that is known to keep them, to be beaten
 *
 * Source: [held-karp]
 */
export function* exactSteps(
  valuer: Valuer,
  known: readonly number[] | null = null,
): Generator<number, Exact, void> {
  const { work, bounds, wetsOnce } = valuer;
  const count = work.jobs.length;
  const own = leastOwn(valuer);
  const dueBy = bounds.map(({ latest }) => Math.min(Infinity, ...latest));
  /** Whether what is left cannot be done in time, or not sooner than by the best order known. */
  const isHopeless = (done: number, time: number): boolean => {
    let end = time;
    for (let job = 0; job < count; job += 1) {
      if ((done >> job) & 1) continue;
      if (time + own[job] > dueBy[job]) return true;
      end += own[job];
    }
    return best !== null && end > best.worth.time;
  };
  let best: { readonly order: readonly number[]; readonly worth: Worth } | null = known && {
    order: known,
    worth: valuer.worth(known),
  };
  if (best && best.worth.late > 0) best = null;
  const all = (1 << count) - 1;
  const ways: (Label[][] | null)[] = Array.from({ length: all + 1 }, () => null);
  const eatsInTime = mealsOf(work);
  let left = MOST_WAYS;
  const covers = (set: number, a: Label, b: Label): boolean =>
    isNoWorse(a, b, wetsOnce) && (!eatsInTime || left < 0 || eatsInTime(set, a, b));
  const put = (set: number, label: Label): void => {
    const bySet = ways[set] ?? Array.from({ length: count }, (): Label[] => []);
    ways[set] = bySet;
    const own = bySet[label.job];
    if (own.some((other) => covers(set, other, label))) return;
    bySet[label.job] = [...own.filter((other) => !covers(set, label, other)), label];
    left -= 1;
  };
  const go = (set: number, from: Progress, before: Label | null): void => {
    for (let next = 0; next < count; next += 1) {
      if ((set >> next) & 1) continue;
      const after = advance(work, bounds, from, before?.job ?? -1, next);
      if (after.late > 0 || (wetsOnce && after.wettings > 1)) continue;
      const grown = set | (1 << next);
      if (isHopeless(grown, after.time)) continue;
      const label: Label = { ...after, job: next, before };
      if (grown < all) {
        put(grown, label);
        continue;
      }
      const worth = { late: 0, time: label.time, changing: label.changing };
      if (!best || isBetter(worth, best.worth)) best = { order: orderOf(label), worth };
    }
  };
  if (count === 0) return { order: [], isProven: true };
  go(0, beginningOfWork(work), null);
  for (let set = 1; set < all; set += 1) {
    const bySet = ways[set];
    if (!bySet) continue;
    for (const labels of bySet) for (const label of labels) go(set, label, label);
    ways[set] = null;
    if (set % 64 === 0) yield set / all;
  }
  return { order: best?.order ?? null, isProven: !eatsInTime || left >= 0 };
}
