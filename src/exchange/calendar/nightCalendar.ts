import { utcOf } from '../../core/night/times/nightClock';
import type { Night } from '../../core/night/types';
import { changeWords } from '../../core/night/words/changeWords';
import { skyEvents } from '../../core/night/words/skyEvents';
import type { Plan } from '../../core/plan/schema/plan';
import { setupLetter } from '../../core/plan/setupLetter';
import { duration } from '../../core/units/durations';
import { type CalendarEvent, icalendarOf } from './ical';

/** A short number for a text, the same everywhere: FNV-1a on 32 bits, from memory. */
function numberOf(text: string): string {
  let hash = 0x811c9dc5;
  for (const octet of new TextEncoder().encode(text)) hash = Math.imul(hash ^ octet, 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, '0');
}

/** What goes on in a setup's time, line by line. */
function doingsOf({ schedule }: Night, job: number): string {
  const lines = schedule.stretches
    .filter((stretch) => stretch.job === job)
    .map(({ doing, from, until }) => `${doing}: ${duration(until - from)}`);
  return lines.join('\n');
}

/**
 * A night as a calendar file: an event for each setup, call, meal and wrap, and the moments at which it gets dark and
 * light. Pure: the same plan, the same bytes.
 */
export function nightCalendar(plan: Plan, night: Night): string {
  const { clock, schedule, call } = night;
  const own = numberOf(JSON.stringify([plan.title, plan.place]));
  const at = (minutes: number): string => utcOf(clock, minutes);
  const event = (
    name: string,
    from: number,
    until: number | null,
    summary: string,
    description = '',
  ): CalendarEvent => ({
    uid: `${name}-${clock.date}-${own}@standclear`,
    from: at(from),
    until: until === null || until <= from ? null : at(until),
    summary,
    description,
  });
  const { meal, lastShot, wrap } = schedule;
  const events: readonly CalendarEvent[] = [
    event('call', call, null, 'Call'),
    ...schedule.setups.map(({ job, setupId, from, until, changes }) => {
      const changing = changes && changes.list.length > 0 ? [`Changes: ${changeWords(changes)}`] : [];
      return event(
        `setup-${setupId}`,
        from,
        until,
        `${setupLetter(job)}: ${plan.setups[job].label}`,
        [...changing, doingsOf(night, job)].join('\n'),
      );
    }),
    ...(meal ? [event('meal', meal.from, meal.until, 'Meal')] : []),
    event('wrap', lastShot, wrap, 'Wrap', `Everyone is off at the end of it.`),
    ...skyEvents(night.sky).map(({ id, name, minutes }) => event(id, minutes, null, name)),
  ];
  const { label, latitudeDegrees, longitudeDegrees } = plan.place;
  return icalendarOf({
    name: plan.title,
    location: label,
    geo: { latitudeDegrees, longitudeDegrees },
    stamp: at(call),
    events: events.toSorted((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0)),
  });
}
