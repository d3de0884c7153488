import { expect, test } from 'vitest';
import { nightClock, offsetAt, utcOf } from '../../../src/core/night/times/nightClock';
import { zoneClock } from '../../../src/exchange/zoneClock';
import { nightRoof } from '../../plans/nightRoof';

test('the clock of a zone, and when it is changed in a night', () => {
  expect(zoneClock('Europe/Lisbon', '2026-11-27')).toEqual({ utcOffsetHours: 0, clockChange: null });
  expect(zoneClock('Europe/Lisbon', '2026-10-24')).toEqual({
    utcOffsetHours: 1,
    clockChange: { time: '02:00', utcOffsetHours: 0 },
  });
  expect(zoneClock('Europe/Lisbon', '2026-03-28')).toEqual({
    utcOffsetHours: 0,
    clockChange: { time: '01:00', utcOffsetHours: 1 },
  });
  expect(zoneClock('America/New_York', '2026-10-31')).toEqual({
    utcOffsetHours: -4,
    clockChange: { time: '02:00', utcOffsetHours: -5 },
  });
  // Half an hour, and zones with a part of an hour.
  expect(zoneClock('Australia/Lord_Howe', '2026-04-04')).toEqual({
    utcOffsetHours: 11,
    clockChange: { time: '02:00', utcOffsetHours: 10.5 },
  });
  expect(zoneClock('Asia/Kathmandu', '2026-01-01')?.utcOffsetHours).toBe(5.75);
  expect(zoneClock('Nowhere/At_All', '2026-01-01')).toBeNull();
});

test("a night that takes over its zone's clock has the zone's offset at every minute", () => {
  const zone = 'America/New_York';
  const shown = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  });
  const known = zoneClock(zone, '2026-10-31');
  if (!known?.clockChange) throw new Error('no change of clocks in the night of one');
  const clock = nightClock(
    nightRoof(
      { utcOffsetHours: known.utcOffsetHours, clockChange: known.clockChange },
      { date: '2026-10-31' },
    ),
  );
  for (let minutes = 720; minutes < 2160; minutes += 7) {
    const at = new Date(utcOf(clock, minutes));
    const local = new Date(at.getTime() + offsetAt(clock, minutes) * 3_600_000);
    expect(shown.format(at), `${minutes}`).toBe(local.toISOString().slice(11, 16));
  }
});
