/** Days from the epoch of 2000, 1 January 12:00 universal time: what the sky is worked out by. */
export type Instant = number;

const MINUTES_PER_DAY = 1440;
/** Julian day number of the epoch. */
const EPOCH = 2451545;

/**
 * Julian day at 0 h universal time of a date of the common calendar.
 *
 * Source: [meeus]
 */
function julianDay(year: number, month: number, day: number): number {
  const [y, m] = month <= 2 ? [year - 1, month + 12] : [year, month];
  const century = Math.floor(y / 100);
  const leaps = 2 - century + Math.floor(century / 4);
  return Math.floor(365.25 * (y + 4716)) + Math.floor(30.6001 * (m + 1)) + day + leaps - 1524.5;
}

/** Minutes after midnight of a clock time such as `22:30`. */
export function minutesOf(time: string): number {
  const [hours, minutes] = time.split(':').map(Number);
  return hours * 60 + minutes;
}

/**
 * The instant so many minutes after the midnight that a date begins with, by a clock that is `utcOffsetHours` ahead of
 * universal time. `date`: as in a plan, `2026-11-27`.
 */
export function instantAt(date: string, minutes: number, utcOffsetHours: number): Instant {
  const [year, month, day] = date.split('-').map(Number);
  return julianDay(year, month, day) - EPOCH + (minutes - utcOffsetHours * 60) / MINUTES_PER_DAY;
}

/** The instant of a clock time in the night of a date: before noon it is the morning after. */
export function instantInNight(date: string, time: string, utcOffsetHours: number): Instant {
  const minutes = minutesOf(time);
  return instantAt(date, minutes < MINUTES_PER_DAY / 2 ? minutes + MINUTES_PER_DAY : minutes, utcOffsetHours);
}
