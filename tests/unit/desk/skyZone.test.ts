import { expect, test } from 'vitest';
import { zoneOffsetHours } from '../../../src/desk/sky/zone';

test('a time zone gives the hours that its clocks are ahead in that very night', () => {
  expect(zoneOffsetHours('Europe/Lisbon', '2026-11-27', '22:30')).toBe(0);
  expect(zoneOffsetHours('Europe/Lisbon', '2026-07-01', '22:30')).toBe(1);
  expect(zoneOffsetHours('America/New_York', '2026-11-27', '22:30')).toBe(-5);
  expect(zoneOffsetHours('Asia/Kolkata', '2026-11-27', '03:00')).toBe(5.5);
  // The clocks of Lisbon go back at 02:00 on 25 October 2026, from memory: the same night has both.
  expect(zoneOffsetHours('Europe/Lisbon', '2026-10-24', '23:00')).toBe(1);
  expect(zoneOffsetHours('Europe/Lisbon', '2026-10-24', '04:00')).toBe(0);
  expect(zoneOffsetHours('Nowhere/Else', '2026-11-27', '22:30')).toBeNull();
});
