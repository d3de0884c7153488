import { expect, test } from 'vitest';
import type { DuskLight } from '../../../../../src/core/night/dusk/lightThroughDusk';
import type { PackingLine } from '../../../../../src/core/night/packing/types';
import { besideRoof } from '../../../../../src/screens/overhead/sun/besideRoof';
import {
  allOf,
  amountText,
  byDepartment,
  listTotal,
  spareText,
} from '../../../../../src/screens/sheet/night/packing/packingWords';
import { duskLine, duskPath, faintLight } from '../../../../../src/screens/sheet/night/sky/duskLine';
import { readClock } from '../../../../../src/screens/sheet/sky/readClock';

const NBSP = '\u00a0';

const line = (more: Partial<PackingLine>): PackingLine => ({
  department: 'grip',
  label: 'Stand',
  count: 3,
  unit: 'pieces',
  spared: null,
  spare: 0,
  detail: '',
  itemIds: [],
  ...more,
});

test('what is taken is what is needed and what is spare', () => {
  const stands = line({ spare: 1 });
  expect(amountText(allOf(stands), stands.unit)).toBe('4');
  expect(spareText(stands)).toBe('1 of it spare');
  expect(spareText(line({}))).toBe('');
  const tape = line({ count: 1.7999999999999998, unit: 'metres', spare: 1 });
  expect(amountText(allOf(tape), tape.unit)).toBe(`2.8${NBSP}m`);
  expect(amountText(384, 'litres')).toBe(`384${NBSP}L`);
});

test('lines stand by whose they are, and add up', () => {
  const lines = [line({ department: 'safety' }), line({}), line({ label: 'Bag', count: 1, spare: 1 })];
  expect(byDepartment(lines).map(({ department, lines: own }) => [department, own.length])).toEqual([
    ['grip', 2],
    ['safety', 1],
  ]);
  expect(listTotal(lines)).toBe('3 lines, 8 pieces');
  expect(listTotal([line({ count: 1 })])).toBe('1 line, 1 piece');
});

test('the curve of the dusk goes down by decades', () => {
  const dusk = [400, 40, 4, 0.4].map(
    (skyLux, k): DuskLight => ({
      minutes: 1000 + k * 10,
      sunAltitude: -k * 5,
      clearTwilightLux: skyLux,
      skyLux,
    }),
  );
  const curve = duskLine(dusk, 120, 80);
  if (!curve) throw new Error('a dusk has a curve');
  expect(curve.decades).toEqual([0.1, 1, 10, 100, 1000]);
  expect(curve.y(1000)).toBeCloseTo(0, 9);
  expect(curve.y(0.1)).toBeCloseTo(80, 9);
  expect(curve.y(400) - curve.y(40)).toBeCloseTo(-20, 9);
  expect(curve.x(910)).toBe(0);
  expect(curve.x(1030)).toBe(120);
  expect(duskPath(dusk.slice(0, 2), curve, ({ skyLux }) => skyLux)).toBe('M90.0 8.0L100.0 28.0');
  expect(duskLine([], 100, 80)).toBeNull();
});

test('what shines stands beside the roof, and its light goes across it', () => {
  const roof = [0, 0, 200, 100] as const;
  const west = besideRoof([-1, 0.1, 0], roof);
  expect(west).toEqual({ at: [-34, 50], way: [1, -0], opposite: [208, 50] });
  expect(besideRoof([0, 1, 0], roof)).toBeNull();
});

test('a time is read as it is said', () => {
  expect(readClock('22.05')).toBe('22:05');
  expect(readClock(' 9:30 ')).toBe('09:30');
  expect(readClock('24:00')).toBeNull();
  expect(readClock('noon')).toBeNull();
});

test('a light is told in figures however faint it is', () => {
  const told = [0, 0.0005, 0.001, 0.01, 0.0997, 0.36, 12].map((lux) =>
    faintLight(lux, 'lx').replace('\u00a0', ' '),
  );
  expect(told).toEqual(['0.00 lx', '0.00050 lx', '0.0010 lx', '0.010 lx', '0.10 lx', '0.36 lx', '12 lx']);
  expect(faintLight(0.01, 'fc')).toBe('0.00093\u00a0fc');
});
