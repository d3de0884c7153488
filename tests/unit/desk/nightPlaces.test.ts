import { expect, test } from 'vitest';
import { nightOf } from '../../../src/core/night/nightOf';
import { moveInOrder } from '../../../src/core/plan/edits/moveInOrder';
import { removeSetup } from '../../../src/core/plan/edits/removeSetup';
import { setSky } from '../../../src/core/plan/edits/setSky';
import { CITIES } from '../../../src/core/sky/cities';
import { atPlace, goesByZone, withZoneClock } from '../../../src/desk/night/places';
import { shownNight } from '../../../src/desk/night/shownNight';
import { zoneOffsets } from '../../../src/exchange/zoneClock';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';

const city = (label: string) => {
  const found = CITIES.find((each) => each.label === label);
  if (!found) throw new Error(`no ${label}`);
  return found;
};

test('every city of the list is in a zone that is known, near the hour of its longitude', () => {
  expect(CITIES.length).toBeGreaterThan(50);
  expect(new Set(CITIES.map(({ label }) => label)).size).toBe(CITIES.length);
  for (const { label, timeZone, latitudeDegrees, longitudeDegrees } of CITIES) {
    const offset = zoneOffsets(timeZone)?.(Date.UTC(2026, 0, 15, 12));
    expect(offset, label).toBeDefined();
    expect(Math.abs((offset ?? 99) - longitudeDegrees / 15), label).toBeLessThan(2.2);
    expect(Math.abs(latitudeDegrees), label).toBeLessThan(70);
  }
});

test('a place brings its clock along, for the night and for the sky over the action, as one change', () => {
  const before = setSky(nightRoof(EVEN_NIGHT, { date: '2026-07-10' }), {
    sky: { glow: 'cloud over a large town', clock: { time: '22:00', utcOffsetHours: 0 } },
  });
  const there = atPlace(before, city('Tokyo'));
  expect(there.place).toMatchObject({ label: 'Tokyo', latitudeDegrees: 35.68, timeZone: 'Asia/Tokyo' });
  expect(there.place.date).toBe('2026-07-10');
  expect(there.night?.utcOffsetHours).toBe(9);
  expect(there.sky?.clock?.utcOffsetHours).toBe(9);
  expect(goesByZone(there)).toBe(true);
  expect(goesByZone(before)).toBe(withZoneClock(before) === before);
});

test('clocks that are changed in the night are taken along, and taken away where they are not', () => {
  // The last Sunday of October begins at midnight of this night.
  const london = atPlace(nightRoof(EVEN_NIGHT, { date: '2026-10-24' }), city('London'));
  expect(london.night).toMatchObject({
    utcOffsetHours: 1,
    clockChange: { time: '02:00', utcOffsetHours: 0 },
  });
  const tokyo = atPlace(london, city('Tokyo'));
  expect(tokyo.night?.clockChange).toBeUndefined();
});

test('a zone that nobody knows changes nothing', () => {
  const odd = nightRoof(EVEN_NIGHT, { timeZone: 'Nowhere/Atall' });
  expect(withZoneClock(odd)).toBe(odd);
  expect(goesByZone(odd)).toBeNull();
});

test('a night is shown in the order that the plan has by now, or that a hand has', () => {
  const plan = nightRoof(EVEN_NIGHT);
  const night = nightOf(plan);
  expect(shownNight(plan, plan, night, null)).toBe(night);
  const moved = moveInOrder(plan, { setupId: 'still', to: 0 });
  const ids = (shown: ReturnType<typeof shownNight>) => shown?.schedule.setups.map(({ setupId }) => setupId);
  expect(ids(shownNight(moved, plan, night, null))).toEqual(['still', 'master', 'single']);
  expect(ids(shownNight(moved, plan, night, ['single', 'still', 'master']))).toEqual([
    'single',
    'still',
    'master',
  ]);
  expect(shownNight(moved, plan, night, null)?.schedule).toEqual(nightOf(moved).schedule);
  expect(shownNight(removeSetup(plan, { setupId: 'still' }), plan, night, null)).toBeNull();
});
