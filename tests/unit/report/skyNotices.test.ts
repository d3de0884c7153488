import { expect, test } from 'vitest';
import type { Sky } from '../../../src/core/plan/schema/sky';
import { noticesOf } from '../../../src/core/report/notices';
import { DEMO, readPlan } from '../../plans/readPlan';

const told = (sky: Sky | undefined): readonly string[] => {
  const { sky: _, ...plan } = readPlan(DEMO);
  return noticesOf({ ...plan, ...(sky && { sky }) })
    .filter(({ where }) => where === 'Sky')
    .map(({ sentence }) => sentence);
};
const at = (time: string, moon: boolean): Sky => ({
  glow: 'clear in the country',
  clock: { time, utcOffsetHours: 0 },
  moon,
});

test('a sun that is up and a moon that is down are said', () => {
  expect(told(undefined)).toEqual([]);
  expect(told(at('23:30', true))).toEqual([]);
  expect(told(at('16:30', false))).toEqual([
    'The sun is up at 16:30, and no light of day is worked out: levels are those of sunset. Set a time after dusk.',
  ]);
  expect(told(at('19:00', true))).toEqual([
    'The moon is to shine at 19:00, when it is below the horizon. Set another time, or do without it.',
  ]);
});
