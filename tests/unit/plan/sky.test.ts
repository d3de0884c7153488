import { expect, test } from 'vitest';
import { parsePlan } from '../../../src/core/plan/parse';
import { smallRoofDocument } from '../smallRoof';

const faultsOf = (more: Readonly<Record<string, unknown>>): readonly string[] => {
  const parsed = parsePlan({ ...smallRoofDocument(), ...more });
  return parsed.ok ? [] : parsed.faults.map(({ sentence }) => sentence);
};
const meter = { id: 'meter-1', label: 'Meter 1', at: [0, 1.5, 0], normal: 'key' };

test('a sky and meters are read, and what is wrong with them is said', () => {
  const clock = { time: '22:30', utcOffsetHours: 1 };
  expect(faultsOf({ sky: { glow: 'clear in the country', clock, moon: true } })).toEqual([]);
  expect(faultsOf({ probes: [meter, { ...meter, id: 'meter-2', normal: [180, -10] }] })).toEqual([]);
  expect(faultsOf({ sky: { glow: 'smog' } })).toEqual([
    'sky.glow: found "smog", expected cloud over a large town, clear over a large town, clear over a small town or clear in the country.',
  ]);
  expect(faultsOf({ sky: { glow: 'clear in the country', clock: { ...clock, time: '25:00' } } })).toEqual([
    'sky.clock.time: found "25:00", expected a time by the clock such as 22:30.',
  ]);
  expect(faultsOf({ probes: [{ ...meter, normal: 'down' }] })).toEqual([
    'probes[0].normal of "Meter 1": found "down", expected key, up or [heading, tilt] in degrees.',
  ]);
  expect(faultsOf({ probes: [meter, meter] })).toEqual([
    'Meter "Meter 1": found the id "meter-1", which "Meter 1" has too, expected an id of its own.',
  ]);
});
