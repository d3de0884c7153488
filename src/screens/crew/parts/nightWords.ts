import { wallTime } from '../../../core/night/times/nightClock';
import type { Night } from '../../../core/night/types';

/** The night's date as a day: `Friday 27 November`; as it is written where it is none. */
export function dayWords(date: string): string {
  const day = new Date(`${date}T00:00:00Z`);
  if (Number.isNaN(day.getTime())) return date;
  const part = (options: Intl.DateTimeFormatOptions): string =>
    new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' }).format(day);
  return `${part({ weekday: 'long' })} ${part({ day: 'numeric' })} ${part({ month: 'long' })}`;
}

/** A minute of the night as a wall shows it; a word for what never comes. */
const timeOr = (night: Night, minutes: number | null | undefined, never: string): string =>
  minutes === null || minutes === undefined || !Number.isFinite(minutes)
    ? never
    : wallTime(night.clock, minutes);

/** What a crew asks first: when it is called, when the sun goes and it is dark, and when it is home. */
export function firstTimes(night: Night): readonly (readonly [word: string, time: string])[] {
  const { span } = night.darkness;
  const dark = span === null ? 'never' : span.from === Number.NEGATIVE_INFINITY ? 'all day' : null;
  return [
    ['call', wallTime(night.clock, night.call)],
    ['sunset', timeOr(night, night.sky.sunset, 'none')],
    ['dark', dark ?? timeOr(night, span?.from, 'never')],
    ['wrap', wallTime(night.clock, night.schedule.wrap)],
  ];
}

/** When a setup's turn comes: from when it is rigged, and from when it is shot. Null for one that the night leaves out. */
export function turnOf(
  night: Night,
  setupId: string,
): { readonly rig: string; readonly shoot: string } | null {
  const placed = night.schedule.setups.find((each) => each.setupId === setupId);
  return placed
    ? { rig: wallTime(night.clock, placed.from), shoot: wallTime(night.clock, placed.shotFrom) }
    : null;
}
