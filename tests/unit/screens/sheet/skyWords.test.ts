import { expect, test } from 'vitest';
import {
  clockText,
  moonText,
  offsetText,
  phaseText,
  skyNow,
  sunText,
  windOf,
} from '../../../../src/screens/sheet/sky/words';

const PLACE = {
  label: 'Arvela',
  latitudeDegrees: 41.15,
  longitudeDegrees: -8.63,
  timeZone: 'Europe/Lisbon',
  date: '2026-11-27',
  northDegrees: 0,
};

test('times and clocks read as on a call sheet', () => {
  expect([1025.6, 1500, 1439.8, null].map(clockText)).toEqual(['17:06', '01:00', '00:00', 'none']);
  expect([0, 1, -3.5].map(offsetText)).toEqual(['UTC', 'UTC+1', 'UTC−3.50']);
  expect([0, 44, 300, 359].map(windOf)).toEqual(['north', 'north-east', 'north-west', 'north']);
});

test('the moon is said by its phase, its place and its light', () => {
  const { moon, sunAltitude, times } = skyNow(PLACE, '23:30', 0);
  expect(moonText(moon, 'lx')).toBe('waning, 84\u00a0% lit, 34° up in the east, 0.09\u00a0lx');
  expect(sunText(sunAltitude)).toBe('67° down, dark');
  expect(clockText(times.sunset)).toBe('17:08');
  const evening = skyNow(PLACE, '18:00', 0);
  expect(moonText(evening.moon, 'lx')).toBe('waning, 86\u00a0% lit, below the horizon');
  expect(sunText(evening.sunAltitude)).toMatch(/^\d+° down, nautical twilight$/);
  expect(sunText(30)).toBe('up, 30°: this is no night');
  expect([0, 0.5, 1].map((lit) => phaseText({ ...moon, lit }))).toEqual([
    'new',
    'waning, 50\u00a0% lit',
    'full',
  ]);
});
