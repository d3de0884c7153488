import type { NightClock } from '../../../../core/night/times/nightClock';
import type { Night } from '../../../../core/night/types';

/** So long before the call and after the wrap it is still the night, minutes. */
export const AROUND = 60;

/** The minute of a night at an instant. @param milliseconds since 1970, as a device's clock has them */
export function minuteAt({ date, utcOffsetHours }: NightClock, milliseconds: number): number {
  const [year, month, day] = date.split('-').map(Number);
  return (milliseconds - Date.UTC(year, month - 1, day)) / 60_000 + utcOffsetHours * 60;
}

/** Whether a minute is of this night's work, an hour before and after it included. */
export const isInNight = ({ call, schedule }: Night, minutes: number): boolean =>
  minutes >= call - AROUND && minutes <= schedule.wrap + AROUND;

/** The setup that is worked on at a minute of the night, by its id; null while everybody eats, and outside the work. */
export function setupAt({ schedule }: Night, minutes: number): string | null {
  const found = schedule.stretches.find(({ from, until }) => from <= minutes && minutes < until);
  if (!found || found.job === null) return null;
  return schedule.setups.find(({ job }) => job === found.job)?.setupId ?? null;
}
