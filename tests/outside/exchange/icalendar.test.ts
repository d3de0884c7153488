import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { nightOf } from '../../../src/core/night/nightOf';
import { utcOf } from '../../../src/core/night/times/nightClock';
import { icalendarOf } from '../../../src/exchange/calendar/ical';
import { nightCalendar } from '../../../src/exchange/calendar/nightCalendar';
import { drawFrom } from '../../plans/draw';
import { DEMO, readPlan } from '../../plans/readPlan';
import { cases } from '../../thorough';

/** Read by somebody else's reader: ical.js 2.2.1. */
function eventsOf(text: string): ICAL.Event[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
}

test("another's reader finds every setup of the demo's night at its time", () => {
  const plan = readPlan(DEMO);
  const night = nightOf(plan);
  const text = nightCalendar(plan, night);
  const events = eventsOf(text);
  for (const { job, from, until } of night.schedule.setups) {
    const event = events.find(({ summary }) => summary.endsWith(`: ${plan.setups[job].label}`));
    expect(event?.startDate.toJSDate().toISOString()).toBe(utcOf(night.clock, from).replace('Z', '.000Z'));
    expect(event?.endDate.toJSDate().toISOString()).toBe(utcOf(night.clock, until).replace('Z', '.000Z'));
    expect(event?.location).toBe(plan.place.label);
  }
  expect(events.map(({ summary }) => summary)).toEqual(
    expect.arrayContaining(['Call', 'Meal', 'Wrap', 'Sunset', 'Civil dusk']),
  );
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  expect(nightCalendar(plan, night)).toBe(text);
});

const PIECES = ['a', ' ', ',', ';', '\\', '\n', ':', 'é', '楼', '🌃', '"', 'n', '\\n', 'BEGIN:VEVENT', '\t'];

test("lines fold at 75 octets between characters, and another's reader puts any text together again", () => {
  for (let seed = 0; seed < cases(90); seed += 1) {
    const draw = drawFrom(seed);
    const words = (): string => Array.from({ length: draw.whole(1, 90) }, () => draw.pick(PIECES)).join('');
    const [summary, description] = [`x${words()}`, `y${words()}`];
    const at = '2026-11-28T01:05:00Z';
    const text = icalendarOf({
      name: words(),
      location: words(),
      geo: null,
      stamp: at,
      events: [{ uid: 'one', from: at, until: null, summary, description }],
    });
    for (const line of text.split('\r\n')) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/[\r\n\ufffd]/);
    }
    const [event] = eventsOf(text);
    // A tab is no text of a calendar.
    expect(event.summary).toBe(summary.replaceAll('\t', ''));
    expect(event.description).toBe(description.replaceAll('\t', ''));
  }
});
