import type { Plan } from '../../plan/schema/plan';
import { type Instant, instantAt, minutesOf } from '../../sky/instant';

/**
 * The clock of a night. Times of the night are minutes after the midnight that its date begins with, by the clock that
 * runs at noon and is never changed; what is read off a wall differs from it once the clocks have been changed.
 */
export interface NightClock {
  /** As in the plan, `2026-11-27`. */
  readonly date: string;
  /** Hours ahead of universal time at noon. */
  readonly utcOffsetHours: number;
  /** Who says so: the night, the sky's clock, or nobody, and it is the whole hour of the longitude. */
  readonly saidBy: 'night' | 'sky' | 'longitude';
  readonly change: { readonly atMinutes: number; readonly utcOffsetHours: number } | null;
}

/** A time off the wall as minutes of the night, and what is odd about it: it comes twice, or the clocks leave it out. */
export interface ReadTime {
  readonly minutes: number;
  readonly odd: 'twice' | 'never' | null;
}

const HOUR = 60;
const DAY = 1440;
/** Degrees that the earth turns in an hour. */
const HOUR_DEGREES = 15;

/** Minutes of the night of a time by a clock that is never changed; before noon it is the morning after. */
function steady(time: string): number {
  const minutes = minutesOf(time);
  return minutes < DAY / 2 ? minutes + DAY : minutes;
}

/** The clock of a plan's night. */
export function nightClock({ place, sky, night }: Pick<Plan, 'place' | 'sky' | 'night'>): NightClock {
  const said = night?.utcOffsetHours ?? sky?.clock?.utcOffsetHours;
  const change = night?.clockChange;
  return {
    date: place.date,
    utcOffsetHours: said ?? Math.round(place.longitudeDegrees / HOUR_DEGREES) + 0,
    saidBy: night?.utcOffsetHours !== undefined ? 'night' : said !== undefined ? 'sky' : 'longitude',
    change: change ? { atMinutes: steady(change.time), utcOffsetHours: change.utcOffsetHours } : null,
  };
}

/** By how many minutes the clocks on the wall go ahead of the one at noon. */
function aheadMinutes({ utcOffsetHours, change }: NightClock, minutes: number): number {
  return change && minutes >= change.atMinutes ? (change.utcOffsetHours - utcOffsetHours) * HOUR : 0;
}

/**
 * A time off the wall as minutes of the night. One that comes twice, as clocks are put back, is its first; one that never
 * comes, as they are put forward, is the moment at which they are.
 */
export function readTime(clock: NightClock, time: string): ReadTime {
  const old = steady(time);
  const { change } = clock;
  if (!change) return { minutes: old, odd: null };
  const changed = old - (change.utcOffsetHours - clock.utcOffsetHours) * HOUR;
  const [isOld, isNew] = [old < change.atMinutes, changed >= change.atMinutes];
  if (isOld) return { minutes: old, odd: isNew ? 'twice' : null };
  return isNew ? { minutes: changed, odd: null } : { minutes: change.atMinutes, odd: 'never' };
}

/** What the clocks on the wall show at a minute of the night, to the whole minute: `01:05`. */
export function wallTime(clock: NightClock, minutes: number): string {
  const shown = Math.round(minutes + aheadMinutes(clock, minutes));
  const ofDay = ((shown % DAY) + DAY) % DAY;
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${two(Math.floor(ofDay / HOUR))}:${two(ofDay % HOUR)}`;
}

/** Hours ahead of universal time at a minute of the night. */
export const offsetAt = (clock: NightClock, minutes: number): number =>
  clock.utcOffsetHours + aheadMinutes(clock, minutes) / HOUR;

/** The instant of a minute of the night. */
export const instantOf = (clock: NightClock, minutes: number): Instant =>
  instantAt(clock.date, minutes, clock.utcOffsetHours);

/** Universal time of a minute of the night, to the second: `2026-11-28T01:05:00Z`. */
export function utcOf({ date, utcOffsetHours }: NightClock, minutes: number): string {
  const [year, month, day] = date.split('-').map(Number);
  const at = new Date(0);
  at.setUTCFullYear(year, month - 1, day);
  const seconds = Math.round((minutes - utcOffsetHours * HOUR) * 60);
  at.setTime(at.getTime() + seconds * 1000);
  return at.toISOString().replace(/\.\d+Z$/, 'Z');
}
