import { expect, test } from 'vitest';
import { nightOf } from '../../../src/core/night/nightOf';
import { changesBetween } from '../../../src/core/night/order/changes';
import { scheduleOf } from '../../../src/core/night/order/schedule';
import { workOf } from '../../../src/core/night/order/work';
import { packingOf } from '../../../src/core/night/packing/packingOf';
import { dropFor } from '../../../src/core/night/suggest/drop';
import { suggestSteps } from '../../../src/core/night/suggest/suggest';
import { nightClock, readTime, utcOf, wallTime } from '../../../src/core/night/times/nightClock';
import { conflictSentence } from '../../../src/core/night/words/demandWords';
import { inOneGo } from '../../../src/core/units/steps';
import { nightCalendar } from '../../../src/exchange/calendar/nightCalendar';
import { nightCsv } from '../../../src/exchange/night/nightCsv';
import { nightDocument } from '../../../src/exchange/night/nightDocument';
import { crowdedPlan, randomPlan } from '../../plans/crowd';
import { drawFrom } from '../../plans/draw';
import { nightRoof } from '../../plans/nightRoof';
import { withNight } from '../../plans/someNight';
import { someWork } from '../../plans/someWork';
import { cases } from '../../thorough';

test('a night has no gap and no overlap, and everything in it takes what it takes', () => {
  for (let seed = 0; seed < cases(900); seed += 1) {
    const draw = drawFrom(seed);
    const work = someWork(draw.whole(0, 9), draw);
    const order = work.order.toSorted((a, b) => ((a * 7 + seed) % 11) - ((b * 7 + seed) % 11));
    const { stretches, meal, wrap, lastShot, end } = scheduleOf(work, order);
    let time = work.call;
    for (const { from, until } of stretches) {
      expect(from, `seed ${seed}`).toBe(time);
      expect(until).toBeGreaterThan(from);
      time = until;
    }
    expect(wrap).toBe(time);
    const minutes = (doing: string, job: number): number =>
      stretches
        .filter((each) => each.doing === doing && each.job === job)
        .reduce((sum, each) => sum + each.until - each.from, 0);
    let wettings = 0;
    for (const [place, job] of order.entries()) {
      const { rig, light, rehearse, shoot, ground } = work.jobs[job];
      expect([
        minutes('rig', job),
        minutes('light', job),
        minutes('rehearse', job),
        minutes('shoot', job),
      ]).toEqual([rig, light, rehearse, shoot]);
      const before = order[place - 1];
      const isWetted = ground === 'wet' && (before === undefined || work.jobs[before].ground !== 'wet');
      expect(minutes('wet down', job)).toBe(isWetted ? work.wetDownMinutes : 0);
      expect(minutes('change', job)).toBe(before === undefined ? 0 : work.legs[before][job]);
      if (isWetted) wettings += 1;
    }
    expect(end.wettings).toBe(wettings);
    // The meal is had where the work goes on beyond when it is due, and then in time.
    if (work.mealMinutes > 0 && lastShot > work.mealBy) expect(meal?.from).toBeLessThanOrEqual(work.mealBy);
    if (lastShot <= work.mealBy) expect(meal).toBeNull();
  }
});

test('every night of a random plan can be timed, suggested, packed and written', () => {
  for (let seed = 0; seed < cases(60); seed += 1) {
    const plan = randomPlan(seed);
    const night = nightOf(plan);
    const { order, conflict } = inOneGo(suggestSteps(night.work));
    expect(conflictSentence(plan, night.clock, conflict) === '').toBe(conflict.length === 0);
    const suggested = { night: nightOf(plan, order), isExact: true, conflict: '' };
    const packing = packingOf(plan, night);
    for (const { count, spare } of packing) {
      expect(count).toBeGreaterThan(0);
      expect(Number.isFinite(spare)).toBe(true);
    }
    const text = JSON.stringify(nightDocument(plan, night, { packing, suggested, darkFrom: null }));
    expect(text).not.toContain('undefined');
    expect(nightCsv(plan, night, packing)).not.toMatch(/NaN|undefined|Infinity/);
    expect(nightCalendar(plan, night)).not.toMatch(/NaN|undefined|Infinity|Invalid/);
    expect(night.notes.map(({ sentence }) => sentence).join(' ')).not.toMatch(
      /NaN|undefined|Infinity|null|!/,
    );
  }
});

test('a time off the wall and what the wall shows are one, but for the hour that is missing or comes twice', () => {
  for (let seed = 0; seed < cases(300); seed += 1) {
    const draw = drawFrom(seed);
    const offsets = [draw.whole(-11, 12), draw.whole(-2, 2) / 2] as const;
    const change = {
      time: draw.pick(['00:00', '01:00', '02:00', '03:00']),
      utcOffsetHours: offsets[0] + offsets[1],
    };
    const clock = nightClock(nightRoof({ utcOffsetHours: offsets[0], clockChange: change }));
    const minutes = draw.whole(720, 2159);
    const time = `${String(Math.floor((minutes % 1440) / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
    const read = readTime(clock, time);
    if (read.odd !== 'never') expect(wallTime(clock, read.minutes), `seed ${seed}`).toBe(time);
    // The engine's own reading of universal time and offset.
    const offset = read.minutes >= (clock.change?.atMinutes ?? 0) ? change.utcOffsetHours : offsets[0];
    const shown = new Date(Date.parse(utcOf(clock, read.minutes)) + offset * 3_600_000);
    if (read.odd !== 'never') expect(shown.toISOString().slice(11, 16)).toBe(time);
  }
});

test('what is left out is the least: no other as small a set is in time with less that is not shot', () => {
  let dropped = 0;
  for (let seed = 0; seed < cases(240); seed += 1) {
    const draw = drawFrom(seed + 77);
    const work = { ...someWork(draw.whole(1, 7), draw), demands: [] };
    const whole = scheduleOf(work);
    const by = work.call + draw.whole(0, Math.round((whole.wrap - work.call) * 1.1));
    const found = dropFor(work, by);
    const sets = Array.from({ length: 2 ** work.jobs.length }, (_, bits) =>
      work.order.filter((job) => (bits >> job) & 1),
    );
    const shot = (jobs: readonly number[]): number =>
      jobs.reduce((sum, job) => sum + work.jobs[job].shoot, 0);
    const best = sets
      .filter(
        (jobs) =>
          scheduleOf(
            work,
            work.order.filter((job) => !jobs.includes(job)),
          ).wrap <= by,
      )
      .toSorted((a, b) => a.length - b.length || shot(a) - shot(b))[0];
    if (!best || best.length === 0) {
      expect(found, `seed ${seed}`).toBeNull();
      continue;
    }
    dropped += 1;
    expect([found?.jobs.length, shot(found?.jobs ?? [])], `seed ${seed}`).toEqual([best.length, shot(best)]);
    expect(found?.schedule.wrap).toBeLessThanOrEqual(by);
  }
  expect(dropped).toBeGreaterThan(20);
});

test('a leg is the move and all that changes but a wet-down, between any two setups of a plan', () => {
  let changed = 0;
  for (let seed = 0; seed < cases(30); seed += 1) {
    const plan = withNight(crowdedPlan(40, 6, seed, 4), drawFrom(seed));
    const work = workOf(plan);
    for (const [from, { move }] of work.jobs.entries())
      for (const to of work.jobs.keys()) {
        const { list, minutes } = changesBetween(work.beginnings, from, to);
        const dry = list.filter(({ kind }) => kind !== 'wetDown');
        const own = dry.reduce((sum, each) => sum + each.minutes, 0);
        expect(work.legs[from][to], `seed ${seed}, ${from} to ${to}`).toBe(move + own);
        if (own < minutes) changed += 1;
      }
  }
  expect(changed).toBeGreaterThan(0);
});

test('of a long night goes one setup after the other, whichever ends it soonest', () => {
  let dropped = 0;
  for (let seed = 0; seed < cases(30); seed += 1) {
    const draw = drawFrom(seed + 501);
    const work = someWork(draw.whole(15, 24), draw);
    const whole = scheduleOf(work);
    const by = work.call + draw.whole(60, Math.round((whole.wrap - work.call) * 1.1));
    const ends = (order: readonly number[]): number => scheduleOf(work, order).wrap;
    let left = work.order;
    const without = (job: number): readonly number[] => left.filter((each) => each !== job);
    while (left.length > 0 && ends(left) > by) {
      const [first, ...others] = left;
      const soonest = others.reduce(
        (best, job) => (ends(without(job)) < ends(without(best)) ? job : best),
        first,
      );
      left = without(soonest);
    }
    const found = dropFor(work, by);
    if (ends(work.order) <= by || ends(left) > by) {
      expect(found, `seed ${seed}`).toBeNull();
      continue;
    }
    dropped += 1;
    expect(found?.schedule.order, `seed ${seed}`).toEqual(left);
  }
  expect(dropped).toBeGreaterThan(5);
});
