import { expect, test } from 'vitest';
import { NBSP } from '../../../src/core/units/numbers';
import { nightWords, sizeWords, whenWords } from '../../../src/screens/plans/words';

const NOON = new Date(2026, 10, 20, 12, 0).getTime();
const MINUTE = 60_000;

test('a night is said by its day, whatever the time zone', () => {
  expect(nightWords('2026-11-20')).toBe('Friday 20 November');
  expect(nightWords('no date')).toBe('no date');
});

test('a time is said as one would say it', () => {
  expect(whenWords(NOON - 20_000, NOON)).toBe('just now');
  expect(whenWords(NOON - MINUTE, NOON)).toBe('1 minute ago');
  expect(whenWords(NOON - 59 * MINUTE, NOON)).toBe('59 minutes ago');
  expect(whenWords(NOON - 120 * MINUTE, NOON)).toBe('today at 10:00');
  expect(whenWords(NOON - 24 * 60 * MINUTE, NOON)).toBe('19 November at 12:00');
  expect(whenWords(NOON - 365 * 24 * 60 * MINUTE, NOON)).toBe('20 November 2025 at 12:00');
  expect(whenWords(NOON + 24 * 60 * MINUTE, NOON)).toBe('21 November at 12:00');
});

test('a size is said in few digits', () => {
  expect(sizeWords(50)).toBe(`50${NBSP}bytes`);
  expect(sizeWords(44_321)).toBe(`44${NBSP}kB`);
  expect(sizeWords(1_234_567)).toBe(`1.2${NBSP}MB`);
});
