import { expect, test } from 'vitest';
import { ambientOf } from '../../../src/core/light/ambient';
import { DARK } from '../../../src/core/light/readsInTheDark';
import { darkFromSentence, darkFromSteps } from '../../../src/core/night/dusk/darkFrom';
import { lightThroughDusk } from '../../../src/core/night/dusk/lightThroughDusk';
import { planAt } from '../../../src/core/night/dusk/planAt';
import { nightClock } from '../../../src/core/night/times/nightClock';
import { reportOf } from '../../../src/core/report/report';
import { inOneGo } from '../../../src/core/units/steps';
import { EVEN_NIGHT, nightRoof } from '../../plans/nightRoof';

test('the light of dusk falls to what the town gives, and is the one that levels are reckoned with', () => {
  const plan = nightRoof(EVEN_NIGHT);
  const table = lightThroughDusk(plan, 5);
  expect(table.length).toBeGreaterThan(15);
  table.slice(1).forEach(({ skyLux, minutes }, k) => {
    expect(skyLux).toBeLessThanOrEqual(table[k].skyLux);
    expect(minutes - table[k].minutes).toBe(5);
  });
  const last = table[table.length - 1];
  expect(last.sunAltitude).toBeLessThanOrEqual(-18);
  expect(last.clearTwilightLux).toBe(0);
  expect(last.skyLux).toBeCloseTo(ambientOf({ ...plan, sky: { glow: 'cloud over a large town' } }).above, 9);
  expect(lightThroughDusk(nightRoof(EVEN_NIGHT, { latitudeDegrees: 80, date: '2026-06-21' }))).toEqual([]);
});

test('what shows is lost from the minute at which the light report first says so', () => {
  // A stand far under the exposure: it reads against the sky until the sky is as dark.
  const base = nightRoof(EVEN_NIGHT, {}, { dark: { ...DARK, stopsUnder: 3 } });
  const plan = {
    ...base,
    setups: base.setups
      .slice(0, 1)
      .map((setup) => ({ ...setup, iso: 100, stop: 8, span: { from: 'start', to: 'start' } })),
    gear: base.gear.map((gear) => ('dim' in gear ? { ...gear, dim: gear.id === 'bulb' ? 0.01 : 0 } : gear)),
  };
  const clock = nightClock(plan);
  const found = inOneGo(darkFromSteps(plan));
  expect(found.length).toBeGreaterThan(0);
  const lost = found.filter(({ minutes, isFromSunset }) => minutes !== null && !isFromSunset);
  expect(lost.length).toBeGreaterThan(0);
  for (const each of lost.slice(0, 2)) {
    const at = each.minutes ?? 0;
    const verdictAt = (minutes: number) =>
      reportOf(planAt(plan, clock, minutes)).setups[0].items.find(({ id }) => id === each.itemId)?.verdict;
    expect([verdictAt(at - 1), verdictAt(at)]).toEqual(['showing', 'lost in the dark']);
    expect(darkFromSentence(plan, each)).toMatch(/is lost in the dark from 1[78]:\d\d on\.$/);
  }
});
