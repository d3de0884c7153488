import { minutesOf } from '../../core/sky/instant';
import { zoneOffsets } from '../../exchange/zoneClock';

/** Milliseconds of a date and a clock time as if the clock showed universal time; before noon it is the day after. */
function asUniversal(date: string, time: string): number {
  const [year, month, day] = date.split('-').map(Number);
  const minutes = minutesOf(time);
  return Date.UTC(year, month - 1, day + (minutes < 720 ? 1 : 0), 0, minutes);
}

/**
 * How many hours the clocks of a time zone are ahead of universal time at a clock time in the night of a date, daylight
 * saving included; null for a zone that the browser does not know. Browsers differ in what they know of zones, so the
 * plan keeps the number and the report goes by that.
 */
export function zoneOffsetHours(timeZone: string, date: string, time: string): number | null {
  const offsetAt = zoneOffsets(timeZone);
  if (!offsetAt) return null;
  const shown = asUniversal(date, time);
  const first = offsetAt(shown);
  return offsetAt(shown - first * 3_600_000);
}
