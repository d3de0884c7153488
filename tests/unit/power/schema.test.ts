import { expect, test } from 'vitest';
import { parsePlan } from '../../../src/core/plan/parse';
import { BARE } from '../../plans/bare';
import { box, cable, drawing, generator } from '../../plans/wired';

const faultsOf = (...gear: readonly object[]): readonly string[] => {
  const parsed = parsePlan({ ...BARE, gear });
  return parsed.ok ? [] : parsed.faults.map(({ sentence }) => sentence);
};

test('a generator of no watts is refused in a sentence, and so is one without a circuit', () => {
  expect(faultsOf(generator('Genny', { continuousWatts: 0 }))).toEqual([
    'gear[0].power.continuousWatts of "Genny": found 0, expected 1 to 500000 watts.',
  ]);
  expect(faultsOf(generator('Genny', { circuits: [] }))[0]).toContain('expected at least one circuit');
});

test.each([
  [box('Box', { circuits: [{ amps: 20, sockets: 2, legs: [1, 1] }] }), 'each leg once'],
  [box('Box', { circuits: [{ amps: 20, sockets: 2, legs: [4] }] }), 'expected 1 to 3'],
  [drawing('Load', -5), 'expected 0 to 500000 watts'],
  [drawing('Load', 5, 0), 'expected 0.1 to 1'],
  [cable('Cord', null, null, 5, { wire: { awg: 13 } }), 'expected either {"awg": 12} or {"mm2": 2.5}'],
  [cable('Cord', null, null, 5, { coiledShare: 1 }), 'expected 0 to 0.95'],
  [cable('Cord', null, null, 5, { circuit: 1.5 }), 'expected a whole number'],
])('%j is refused', (gear, message) => {
  expect(faultsOf(gear).join('\n')).toContain(message);
});

test('a plan that says nothing of power is read as it always was', () => {
  const { power: _, ...silent } = generator('Genny');
  expect(faultsOf(silent)).toEqual([]);
  const parsed = parsePlan({ ...BARE, gear: [silent] });
  expect(parsed.ok && parsed.value.gear[0]).toEqual(silent);
});
