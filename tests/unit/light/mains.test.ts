import { expect, test } from 'vitest';
import { likelyHertz, mainsLamps, setupFlicker } from '../../../src/core/light/mains';
import type { Gear } from '../../../src/core/plan/schema/gear';
import { keyedFace, keyOn } from '../../plans/keyedFace';

const bulb: Gear = {
  id: 'bulb',
  label: 'Bulb',
  kind: 'practical',
  head: 'globe',
  at: [1, 2, 1],
  headingDegrees: 0,
  dim: 1,
};
const roof = (...gear: readonly Gear[]) =>
  keyedFace({ gear, cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0 }] });

test('lamps of the place hang on the mains, what the crew brings is steady', () => {
  expect(mainsLamps(roof(bulb, ...keyOn('key', [0, 3], [0, 0])))).toEqual([
    { itemId: 'bulb', form: 'bulb', pulses: 'perhaps' },
  ]);
  expect(mainsLamps(roof({ ...bulb, dim: 0 }))).toEqual([]);
});

test('the place’s time zone says what mains are likely', () => {
  const zones = [
    'Europe/Lisbon',
    'America/New_York',
    'America/Argentina/Buenos_Aires',
    'Asia/Seoul',
    'Asia/Tokyo',
  ];
  expect(zones.map((timeZone) => likelyHertz({ timeZone }))).toEqual([50, 60, 50, 60, 50]);
});

test('a setup’s verdict', () => {
  const plan = roof(bulb);
  const [setup] = plan.setups;
  // 24 frames at 180° in Lisbon.
  expect(setupFlicker(plan, setup).verdict).toBe('flickers');
  expect(setupFlicker(plan, setup, 60).verdict).toBe('safe');
  expect(setupFlicker(plan, { ...setup, shutterDegrees: 172.8 }).verdict).toBe('safe');
  expect(setupFlicker(plan, { ...setup, shutterDegrees: 174 }).verdict).toBe('unnoticed');
  expect(setupFlicker(roof(), roof().setups[0]).verdict).toBe('no mains lamps');
});
