import { expect, test } from 'vitest';
import { nightOf } from '../../../src/core/night/nightOf';
import { nightClock, offsetAt, readTime, utcOf, wallTime } from '../../../src/core/night/times/nightClock';
import type { NightPlan } from '../../../src/core/plan/schema/night';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';

const clockOf = (night: NightPlan) => nightClock(nightRoof(night));
const sentences = (...args: Parameters<typeof nightRoof>): string =>
  nightOf(nightRoof(...args))
    .notes.map(({ sentence }) => sentence)
    .join('\n');

test('before noon is the morning after', () => {
  const clock = clockOf({ utcOffsetHours: 1 });
  expect(readTime(clock, '18:30').minutes).toBe(18 * 60 + 30);
  expect(readTime(clock, '01:05').minutes).toBe(25 * 60 + 5);
  expect(wallTime(clock, 25 * 60 + 5)).toBe('01:05');
  expect(utcOf(clock, 25 * 60 + 5)).toBe('2026-11-21T00:05:00Z');
});

test('clocks that go back in the night: an hour comes twice, and everything after it is later', () => {
  const clock = clockOf({ utcOffsetHours: 2, clockChange: { time: '03:00', utcOffsetHours: 1 } });
  expect(readTime(clock, '01:59')).toEqual({ minutes: 25 * 60 + 59, odd: null });
  expect(readTime(clock, '02:30')).toEqual({ minutes: 26 * 60 + 30, odd: 'twice' });
  expect(readTime(clock, '03:00')).toEqual({ minutes: 28 * 60, odd: null });
  expect(wallTime(clock, 26 * 60 + 59)).toBe('02:59');
  expect(wallTime(clock, 27 * 60)).toBe('02:00');
  expect(wallTime(clock, 28 * 60)).toBe('03:00');
  expect(utcOf(clock, 27 * 60)).toBe('2026-11-21T01:00:00Z');
  expect([offsetAt(clock, 1619), offsetAt(clock, 1620)]).toEqual([2, 1]);
});

test('clocks that go forward in the night: an hour never comes', () => {
  const clock = clockOf({ utcOffsetHours: 0, clockChange: { time: '01:00', utcOffsetHours: 1 } });
  expect(readTime(clock, '01:30')).toEqual({ minutes: 25 * 60, odd: 'never' });
  expect(readTime(clock, '02:00')).toEqual({ minutes: 25 * 60, odd: null });
  expect(readTime(clock, '03:00')).toEqual({ minutes: 26 * 60, odd: null });
  expect(wallTime(clock, 25 * 60)).toBe('02:00');
});

test('what is odd about times and clocks is said', () => {
  const change = { time: '01:00', utcOffsetHours: 1 };
  const forward = sentences({ ...EVEN_NIGHT, wrapBy: '01:30', clockChange: change });
  expect(forward).toContain('01:30 never comes, as the clocks go forward that night: 02:00 is taken.');
  expect(forward).toContain('At 01:00 the clocks go forward by 1\u00a0h.');
  const back = { ...EVEN_NIGHT, utcOffsetHours: 1, wrapBy: '01:30' };
  expect(sentences({ ...back, clockChange: { time: '02:00', utcOffsetHours: 0 } })).toContain(
    '01:30 comes twice, as the clocks go back that night: the first is taken.',
  );
  expect(sentences({}, { longitudeDegrees: 31 })).toContain('+2\u00a0h is taken, by its longitude.');
  expect(sentences({}, { longitudeDegrees: 151 })).toContain(': +10\u00a0h is taken, by its longitude.');
  expect(sentences({}, { longitudeDegrees: -3 })).toContain(': 0\u00a0h is taken, by its longitude.');
  expect(sentences({}, { longitudeDegrees: -151 })).toContain(
    ': \u221210\u00a0h is taken, by its longitude.',
  );
  expect(sentences({ utcOffsetHours: 5.75 })).toContain('universal time, +5.75\u00a0h.');
  expect(sentences({})).toMatch(/does not say when the crew is called: \d\d:\d\d is taken/);
  expect(sentences({ utcOffsetHours: 9 })).toMatch(
    /the sun stands highest at 21:\d\d: look at the longitude/,
  );
  expect(sentences(EVEN_NIGHT, { date: '2026-02-30' })).toContain(
    'There is no 2026-02-30: it is taken for 2026-03-02.',
  );
  expect(sentences(EVEN_NIGHT)).toBe('Everyone wraps at 21:40.');
});

test('a place where the sun does not set, or does not rise, is timed all the same and said so', () => {
  const north = { latitudeDegrees: 69.6, longitudeDegrees: 18.9 };
  const asked: NightPlan = {
    ...EVEN_NIGHT,
    utcOffsetHours: 1,
    setups: [
      { setup: 'master', when: 'after dark' },
      { setup: 'single', when: 'before dark' },
    ],
  };
  const summer = sentences(asked, { ...north, date: '2026-06-21' });
  expect(summer).toContain('It does not get dark that night: there is no nautical dusk.');
  expect(summer).toContain(
    'Master from the stairs is to be shot after dark, and it never gets so dark there that night',
  );
  expect(summer).not.toContain('Single on Ana is to be shot');
  const pole = { latitudeDegrees: 90, longitudeDegrees: 0 };
  const winter = sentences(asked, { ...pole, date: '2026-12-21' });
  expect(winter).toContain('The sun does not rise on that date');
  expect(winter).toContain('It is dark from noon to noon');
  expect(winter).toContain('Single on Ana is to be shot before dark, and it is never light there that night');
  expect(winter).not.toContain('Master from the stairs is to be shot');
  expect(sentences(asked, { ...pole, date: '2026-06-21' })).toContain('The sun does not set on that date');
});
