import { expect, test } from 'vitest';
import type { Demand } from '../../../src/core/night/order/demands';
import { scheduleOf } from '../../../src/core/night/order/schedule';
import type { Job, Work } from '../../../src/core/night/order/work';
import { exactSteps } from '../../../src/core/night/suggest/exact';
import { suggestSteps } from '../../../src/core/night/suggest/suggest';
import { isBetter, Valuer, type Worth } from '../../../src/core/night/suggest/worth';
import { inOneGo } from '../../../src/core/units/steps';
import { drawFrom } from '../../plans/draw';
import { someWork } from '../../plans/someWork';
import { cases } from '../../thorough';

/** Every order of so many jobs. */
function* ordersOf(left: readonly number[], done: readonly number[] = []): Generator<number[], void, void> {
  if (left.length === 0) yield [...done];
  for (const job of left)
    yield* ordersOf(
      left.filter((each) => each !== job),
      [...done, job],
    );
}

/** What the best of all orders is worth that keep some demands; null where none does. Times are read off the schedule. */
function bestOfAll(work: Work, demands: readonly Demand[]): Worth | null {
  const asked = { ...work, demands };
  let best: Worth | null = null;
  for (const order of ordersOf(work.jobs.map((_, k) => k))) {
    const { breaches, lastShot, end } = scheduleOf(asked, order);
    if (breaches.length > 0) continue;
    const worth = { late: 0, time: lastShot, changing: end.changing };
    if (!best || isBetter(worth, best)) best = worth;
  }
  return best;
}

test('what is suggested for a small night is the best of all orders, and says when there is none', () => {
  const seen = { kept: 0, not: 0 };
  for (let seed = 0; seed < cases(90); seed += 1) {
    const draw = drawFrom(seed);
    const work = someWork(draw.whole(1, seed % 12 === 0 ? 7 : 6), draw);
    const best = bestOfAll(work, work.demands);
    const found = inOneGo(suggestSteps(work));
    expect(
      found.order.toSorted((a, b) => a - b),
      `seed ${seed}`,
    ).toEqual(work.jobs.map((_, k) => k));
    if (best) {
      seen.kept += 1;
      expect(found.isExact).toBe(true);
      expect(found.conflict).toEqual([]);
      expect(found.worth, `seed ${seed}`).toEqual(best);
      expect(scheduleOf(work, found.order).breaches, `seed ${seed}`).toEqual([]);
      continue;
    }
    seen.not += 1;
    // What is said to be in conflict is, and without any one of it is not.
    expect(found.conflict.length, `seed ${seed}`).toBeGreaterThan(0);
    expect(bestOfAll(work, found.conflict), `seed ${seed}`).toBeNull();
    for (const demand of found.conflict)
      expect(
        bestOfAll(
          work,
          found.conflict.filter((each) => each !== demand),
        ),
        `seed ${seed}`,
      ).not.toBeNull();
  }
  expect(seen.kept).toBeGreaterThan(5);
  expect(seen.not).toBeGreaterThan(5);
});

test('a meal that is had while ground dries makes the best of an order that would be later without', () => {
  const base = someWork(5, drawFrom(1));
  const shot = (setupId: string, ground: Job['ground']): Job => ({
    setupId,
    rig: 0,
    light: 0,
    rehearse: 0,
    shoot: 10,
    move: 0,
    ground,
  });
  const late = (setupId: string): Demand => ({
    kind: 'from',
    setupId,
    performerId: null,
    earliest: base.call + 85,
    latest: Infinity,
  });
  const work: Work = {
    ...base,
    jobs: [shot('wet', 'wet'), shot('a', null), shot('b', null), shot('c', 'dry'), shot('d', 'dry')],
    legs: base.legs.map((row) => row.map(() => 0)),
    demands: [late('c'), late('d')],
    mealBy: base.call + 105,
    mealMinutes: 45,
    wetDownMinutes: 0,
    driesMinutes: 80,
  };
  // Wetted first, the ground is dry in time for one more shot before the meal; wetted second, the meal is had while it dries.
  expect(inOneGo(exactSteps(new Valuer(work)))).toMatchObject({ isProven: true });
  const found = inOneGo(suggestSteps(work));
  expect(found.worth).toEqual(bestOfAll(work, work.demands));
  expect(found.worth.time).toBe(base.call + 120);
});

test('nights with meals among wet and dry setups are suggested their best too', () => {
  let wetAndDry = 0;
  for (let seed = 0; seed < cases(900); seed += 1) {
    const draw = drawFrom(seed + 100_000);
    const base = someWork(draw.whole(3, 5), draw);
    const work: Work = {
      ...base,
      jobs: base.jobs.map((job) => ({
        ...job,
        rig: draw.whole(0, 5),
        light: draw.whole(0, 5),
        rehearse: 0,
        shoot: draw.whole(5, 15),
        ground: draw.pick(['wet', 'dry', null] as const),
      })),
      legs: base.legs.map((row) => row.map(() => draw.whole(0, 12))),
      demands: base.demands.filter(({ kind }) => kind === 'from' || kind === 'in from'),
      mealBy: base.call + draw.whole(30, 200),
      mealMinutes: draw.pick([30, 45, 60]),
      driesMinutes: draw.whole(40, 150),
    };
    if (['wet', 'dry'].every((ground) => work.jobs.some((job) => job.ground === ground))) wetAndDry += 1;
    const { order, isProven } = inOneGo(exactSteps(new Valuer(work)));
    const best = bestOfAll(work, work.demands);
    expect(isProven, `seed ${seed}`).toBe(true);
    expect(order && new Valuer(work).worth(order), `seed ${seed}`).toEqual(best);
  }
  expect(wetAndDry).toBeGreaterThan(50);
});

test('a long night is never suggested worse than it is, and the same every time', () => {
  for (let seed = 0; seed < cases(9); seed += 1) {
    const draw = drawFrom(seed + 500);
    const work = someWork(draw.whole(13, 20), draw);
    const before = new Valuer(work).worth(work.order);
    let last = before;
    let steps = 0;
    const suggesting = suggestSteps(work);
    let step = suggesting.next();
    for (; !step.done && steps < 40; step = suggesting.next(), steps += 1) {
      expect(isBetter(last, step.value.worth)).toBe(false);
      last = step.value.worth;
    }
    expect(isBetter(before, last)).toBe(false);
    const again = suggestSteps(work);
    let other = again.next();
    for (let k = 0; k < steps; k += 1) other = again.next();
    expect(other.value).toEqual(step.value);
  }
});
