import { formatNumber, NBSP } from '../../core/units/numbers';

const DAY = { weekday: 'long', day: 'numeric', month: 'long' } as const;

/** `Friday 20 November`, whatever the time zone of whoever looks; a date that is none as it stands. */
export function nightWords(isoDate: string): string {
  const day = new Date(`${isoDate}T00:00:00Z`);
  if (Number.isNaN(day.getTime())) return isoDate;
  return new Intl.DateTimeFormat('en-GB', { ...DAY, timeZone: 'UTC' }).format(day).replace(',', '');
}

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

const isSameDay = (one: Date, other: Date): boolean => one.toDateString() === other.toDateString();

/**
 * When something was done, as one would say it: `just now`, `12 minutes ago`, `today at 14:05`, `20 November at 14:05`;
 * what a wrong clock put into times to come by its date too.
 */
export function whenWords(at: number, now: number): string {
  const passed = now - at;
  if (Math.abs(passed) < MINUTE_MS) return 'just now';
  if (passed > 0 && passed < HOUR_MS) {
    const minutes = Math.floor(passed / MINUTE_MS);
    return `${minutes} minute${minutes === 1 ? '' : 's'} ago`;
  }
  const [day, today] = [new Date(at), new Date(now)];
  const clock = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' }).format(day);
  if (isSameDay(day, today)) return `today at ${clock}`;
  const year = day.getFullYear() === today.getFullYear() ? ({} as const) : ({ year: 'numeric' } as const);
  const date = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', ...year }).format(day);
  return `${date} at ${clock}`;
}

const KILO = 1000;

/** A file's size: `84 kB`, `1.2 MB`. */
export function sizeWords(bytes: number): string {
  if (bytes < KILO) return `${bytes}${NBSP}bytes`;
  if (bytes < KILO * KILO) return `${formatNumber(bytes / KILO, 0)}${NBSP}kB`;
  return `${formatNumber(bytes / (KILO * KILO), 1)}${NBSP}MB`;
}
