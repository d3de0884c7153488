import { expect, test } from 'vitest';
import { changeProbe } from '../../../src/core/plan/edits/changeProbe';
import { setStop } from '../../../src/core/plan/edits/setStop';
import { meterReadings } from '../../../src/desk/sky/meterReadings';
import { meterBounds } from '../../../src/screens/overhead/probes/meterBounds';
import { facingOf, mostlyText, readingText } from '../../../src/screens/overhead/probes/meterWords';
import { keyedFace, keyOn } from '../../plans/keyedFace';

const CAMERA = { id: 'front', label: 'Front', at: [0, 3] as [number, number], headingDegrees: 0 };
const base = keyedFace({ gear: keyOn('1', [-1.5, 3], [0, 0], 0.05, 2.6), cameras: [CAMERA] });
const plan = {
  ...base,
  probes: [
    { id: 'meter-1', label: 'Meter 1', at: [0, 1.5, 0] as [number, number, number], normal: 'key' as const },
  ],
};

test('a meter reads the key against the stop of the setup that is looked through', () => {
  const [roof] = meterReadings(plan, null, 0);
  expect(roof).toMatchObject({ id: 'meter-1', itemId: '1', stops: null });
  const [through] = meterReadings(plan, 'front', 0);
  expect(through.lux).toBeCloseTo(roof.lux, 6);
  const [setup] = plan.setups;
  const closed = setStop(plan, { setupId: 'front', stop: setup.stop * 2 });
  expect((through.stops ?? 0) - (meterReadings(closed, 'front', 0)[0].stops ?? 0)).toBeCloseTo(2, 6);
  expect(meterReadings(base, null, 0)).toEqual([]);
});

test('is said in a line, with where it comes from and what it faces', () => {
  const [reading] = meterReadings(plan, 'front', 0);
  expect(readingText({ ...reading, lux: 420, stops: 0.3 }, 'lx')).toBe('420\u00a0lx, +0.3\u00a0stops');
  expect(readingText({ ...reading, lux: 420, stops: null }, 'fc')).toBe('39\u00a0fc');
  expect(mostlyText(plan, reading)).toBe('Head 1');
  expect(mostlyText(plan, { ...reading, itemId: null })).toBe('sky, streets and moon alone');
  const turned = changeProbe(plan, { id: 'meter-1', patch: { normal: [90, 10] } });
  expect((turned.probes ?? []).map(facingOf)).toEqual(['way']);
  expect(meterBounds(plan, () => [100, 50])).toEqual([[88, 36, 212, 66]]);
});
