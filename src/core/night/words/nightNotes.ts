import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { setupLetter } from '../../plan/setupLetter';
import { listed } from '../../report/listed';
import { duration } from '../../units/durations';
import { wallTime } from '../times/nightClock';
import type { Night, NightNote } from '../types';
import { clockNotes } from './clockNotes';
import { breachSentence } from './demandWords';

type Told = Omit<Night, 'notes'>;

const nameOf = (plan: Plan, job: number): string => plan.setups[job].label;
/** For lists: names may have commas of their own. */
const letteredName = (plan: Plan, job: number): string => `${setupLetter(job)} (${nameOf(plan, job)})`;

/** Whether everyone wraps in time, with the minutes between; only when, where nobody asks for a time. */
function wrapSentence({ clock, schedule, wrapBy }: Told): string {
  const at = wallTime(clock, schedule.wrap);
  if (schedule.setups.length === 0) return 'The plan has no setup yet, so there is no night to time.';
  if (wrapBy === null) return `Everyone wraps at ${at}.`;
  const by = wallTime(clock, wrapBy);
  const margin = wrapBy - schedule.wrap;
  if (margin === 0) return `Everyone wraps by ${by}, to the minute.`;
  return margin > 0
    ? `Everyone wraps by ${by}: at ${at}, ${duration(margin)} before it.`
    : `Not everyone wraps by ${by}: it is ${at}, ${duration(-margin)} after it.`;
}

/** What would have everyone wrapped in time; empty where they are. */
function dropSentences(plan: Plan, { clock, schedule, wrapBy, drop, call }: Told): string[] {
  if (wrapBy === null || schedule.wrap <= wrapBy) return [];
  if (wrapBy <= call) return [`The wrap, ${wallTime(clock, wrapBy)}, is asked for before the call.`];
  if (!drop) return [`No setup that is left out would have everyone wrapped by ${wallTime(clock, wrapBy)}.`];
  const names = drop.jobs.map((job) => letteredName(plan, job));
  return [
    `Without ${listed(names)} everyone wraps at ${wallTime(clock, drop.schedule.wrap)}; else ${duration(schedule.wrap - wrapBy)} have to be saved elsewhere.`,
  ];
}

/** A second break, where the work goes on for so long. */
function mealSentences({ clock, schedule, work }: Told): string[] {
  const { meal, lastShot } = schedule;
  const stretch = work.mealBy - work.call;
  if (!meal || lastShot - meal.until <= stretch) return [];
  return [
    `Work goes on for ${duration(lastShot - meal.until)} after the meal: another break is due by ${wallTime(clock, meal.until + stretch)}.`,
  ];
}

/** Where wetted ground dries before the next setup that wants it wet, though the two follow each other. */
function dryingSentences(plan: Plan, { schedule, work }: Told): string[] {
  return schedule.setups.flatMap((placed, k) => {
    const before = schedule.setups[k - 1];
    if (!before || work.jobs[placed.job].ground !== 'wet' || work.jobs[before.job].ground !== 'wet')
      return [];
    const gap = placed.shotFrom - work.jobs[placed.job].rehearse - before.until;
    if (gap <= work.driesMinutes) return [];
    return [
      `Between ${named(nameOf(plan, before.job))} and ${named(nameOf(plan, placed.job))} lie ${duration(gap)}, and the ground dries in ${duration(work.driesMinutes)}: keep it wet.`,
    ];
  });
}

/** What is shot after dawn. */
function dawnSentences(plan: Plan, { clock, schedule, sky }: Told): string[] {
  const dawn = sky.civilDawn;
  if (dawn === null) return [];
  const late = schedule.setups.filter(({ until, shotFrom }) => until > dawn && shotFrom >= 720);
  const free = late.filter(({ setupId }) =>
    schedule.breaches.every(({ demand }) => demand.kind !== 'after dark' || demand.setupId !== setupId),
  );
  if (free.length === 0) return [];
  const names = listed(free.map(({ job }) => letteredName(plan, job)));
  return [
    `It is light again from ${wallTime(clock, dawn)}, civil dawn, and ${names} ${free.length === 1 ? 'is' : 'are'} shot after that.`,
  ];
}

/** All that there is to say of a night, what breaks something first. */
export function nightNotes(plan: Plan, night: Told): readonly NightNote[] {
  const { clock, schedule, wrapBy } = night;
  const breaks = schedule.breaches.map((breach) => breachSentence(plan, clock, schedule, breach));
  const isLate = wrapBy !== null && schedule.wrap > wrapBy;
  const said = [
    ...mealSentences(night),
    ...dryingSentences(plan, night),
    ...dawnSentences(plan, night),
    ...clockNotes(plan, clock),
  ];
  const note =
    (standing: NightNote['standing']) =>
    (sentence: string): NightNote => ({ standing, sentence });
  return [
    note(isLate ? 'breaks' : 'said')(wrapSentence(night)),
    ...dropSentences(plan, night).map(note('breaks')),
    ...breaks.map(note('breaks')),
    ...said.map(note('said')),
  ];
}
