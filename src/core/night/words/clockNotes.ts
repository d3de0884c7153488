import type { Plan } from '../../plan/schema/plan';
import { RISING_DEGREES, sunFrom } from '../../sky/horizon';
import { duration } from '../../units/durations';
import { formatSigned, NBSP } from '../../units/numbers';
import { callOf } from '../times/call';
import { darknessOf, oddNoonHours, timesOfSky } from '../times/darkness';
import { instantOf, type NightClock, readTime, wallTime } from '../times/nightClock';

const NOON = 720;

/** Hours ahead of universal time: `+1 h`, `−3.5 h`, `+5.75 h`. */
export const hoursAhead = (hours: number): string =>
  `${formatSigned(hours, 2).replace(/\.?0+$/, '')}${NBSP}h`;

/** Every time by the clock that a night names. */
function timesIn({ night }: Plan): readonly string[] {
  if (!night) return [];
  const between = [...(night.setups ?? []), ...(night.cast ?? [])].flatMap(({ from, until }) => [
    from,
    until,
  ]);
  return [...new Set([night.call, night.wrapBy, ...between])].flatMap((time) => time ?? []);
}

function oddTimes(plan: Plan, clock: NightClock): string[] {
  const { change } = clock;
  if (!change) return [];
  const forward = change.utcOffsetHours > clock.utcOffsetHours;
  const turn = `the clocks go ${forward ? 'forward' : 'back'} that night`;
  return timesIn(plan).flatMap((time) => {
    const { odd, minutes } = readTime(clock, time);
    if (odd === 'twice') return [`${time} comes twice, as ${turn}: the first is taken.`];
    if (odd === 'never') return [`${time} never comes, as ${turn}: ${wallTime(clock, minutes)} is taken.`];
    return [];
  });
}

/** A date that the calendar does not have, as the one that it is taken for. */
function oddDate({ place: { date } }: Plan): string[] {
  const [year, month, day] = date.split('-').map(Number);
  const taken = new Date(0);
  taken.setUTCFullYear(year, month - 1, day);
  if (taken.getUTCMonth() === month - 1 && taken.getUTCDate() === day) return [];
  return [`There is no ${date}: it is taken for ${taken.toISOString().slice(0, 10)}.`];
}

/** What sun and dark do that nobody would expect, near the poles. */
function polarNotes(plan: Plan, clock: NightClock): string[] {
  const { sunset, sunrise } = timesOfSky(plan, clock);
  const { span, kind, isPolar } = darknessOf(plan, clock);
  const notes: string[] = [];
  if (sunset === null && sunrise === null)
    notes.push(
      sunFrom(plan.place, instantOf(clock, NOON)).altitude > RISING_DEGREES
        ? 'The sun does not set on that date: it stays above the horizon from noon to noon.'
        : 'The sun does not rise on that date: it stays below the horizon from noon to noon.',
    );
  if (!span) notes.push(`It does not get dark that night: there is no ${kind} dusk.`);
  else if (isPolar) notes.push(`It is dark from noon to noon: the sun stays below ${kind} dusk.`);
  return notes;
}

/** What is odd about a night's clock, its date and its sky, and what is taken where the plan says nothing; in sentences. */
export function clockNotes(plan: Plan, clock: NightClock): readonly string[] {
  const notes = oddDate(plan);
  if (clock.saidBy === 'longitude')
    notes.push(
      `The plan does not say how far its clock is ahead of universal time: ${hoursAhead(clock.utcOffsetHours)} is taken, by its longitude.`,
    );
  const noon = oddNoonHours(plan, clock);
  if (noon !== null)
    notes.push(
      `By this clock the sun stands highest at ${wallTime(clock, NOON + noon * 60)}: look at the longitude and at the hours ahead of universal time, ${hoursAhead(clock.utcOffsetHours)}.`,
    );
  notes.push(...polarNotes(plan, clock), ...oddTimes(plan, clock));
  const call = callOf(plan, clock);
  if (!call.isSaid)
    notes.push(`The plan does not say when the crew is called: ${wallTime(clock, call.minutes)} is taken.`);
  const { change } = clock;
  if (change) {
    const minutes = (change.utcOffsetHours - clock.utcOffsetHours) * 60;
    if (minutes !== 0)
      notes.push(
        `At ${wallTime({ ...clock, change: null }, change.atMinutes)} the clocks go ${minutes > 0 ? 'forward' : 'back'} by ${duration(Math.abs(minutes))}.`,
      );
  }
  return notes;
}
