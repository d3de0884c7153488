/** Hours that the clocks of a time zone are ahead of universal time at an instant, milliseconds since 1970. */
export type OffsetAt = (instant: number) => number;

/**
 * The offsets of a time zone, as this engine knows it; null for a zone that it does not know. Engines differ in what they
 * know of zones, so nothing that a plan's report rests on comes from here.
 */
export function zoneOffsets(timeZone: string): OffsetAt | null {
  let zone: Intl.DateTimeFormat;
  try {
    zone = new Intl.DateTimeFormat('en-GB', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
    });
  } catch {
    return null;
  }
  return (instant) => {
    const parts = new Map(zone.formatToParts(instant).map(({ type, value }) => [type, Number(value)]));
    const of = (type: Intl.DateTimeFormatPartTypes): number => parts.get(type) ?? 0;
    const shown = Date.UTC(of('year'), of('month') - 1, of('day'), of('hour') % 24, of('minute'));
    return (shown - Math.floor(instant / 60_000) * 60_000) / 3_600_000;
  };
}

/** The clock of a zone in a night, as a plan's night has it. */
export interface ZoneClock {
  /** At noon. */
  readonly utcOffsetHours: number;
  /** At which time of the clock that ran at noon the clocks are changed, and what holds from then on; null where they are not. */
  readonly clockChange: { readonly time: string; readonly utcOffsetHours: number } | null;
}

const HOUR = 3_600_000;
const MINUTE = 60_000;

/** The instant at which clocks show a time that is written as if it were universal. */
function instantShown(offsetAt: OffsetAt, shown: number): number {
  const first = offsetAt(shown);
  return shown - offsetAt(shown - first * HOUR) * HOUR;
}

/** The clock of a time zone in the night that begins on a date, from noon to noon; null for a zone that is not known. */
export function zoneClock(timeZone: string, date: string): ZoneClock | null {
  const offsetAt = zoneOffsets(timeZone);
  if (!offsetAt) return null;
  const [year, month, day] = date.split('-').map(Number);
  const noon = instantShown(offsetAt, Date.UTC(year, month - 1, day, 12));
  let [before, after] = [noon, instantShown(offsetAt, Date.UTC(year, month - 1, day + 1, 12))];
  const [utcOffsetHours, changed] = [offsetAt(before), offsetAt(after)];
  if (utcOffsetHours === changed) return { utcOffsetHours, clockChange: null };
  while (after - before > MINUTE) {
    const middle = before + Math.floor((after - before) / 2 / MINUTE) * MINUTE;
    if (offsetAt(middle) === utcOffsetHours) before = middle;
    else after = middle;
  }
  const time = new Date(after + utcOffsetHours * HOUR).toISOString().slice(11, 16);
  return { utcOffsetHours, clockChange: { time, utcOffsetHours: changed } };
}
