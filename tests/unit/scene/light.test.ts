import { expect, test } from 'vitest';
import { beamShare } from '../../../src/core/form/beam';
import type { LampForm } from '../../../src/core/form/types';
import { coneOf } from '../../../src/scene/light/beam';
import { CandelaRows } from '../../../src/scene/light/candelaRows';
import { gathered } from '../../../src/scene/light/gathered';
import { colourOfHex, colourOfKelvin, colourOfLamp, luminanceOf } from '../../../src/scene/light/kelvin';
import { luxAt, spotOfLamp } from '../../../src/scene/light/spotSources';

const lamp = (more: Partial<LampForm>): LampForm => ({
  itemId: 'a',
  headClassId: 'h',
  position: [0, 0, 0],
  direction: [0, 0, -1],
  peakCandela: 100,
  beamDegrees: 30,
  fieldDegrees: 50,
  distribution: null,
  kelvin: 3200,
  tint: null,
  sizeMetres: [0.1, 0.1, 0.1],
  ...more,
});

const rows = new CandelaRows();

test('a lamp keeps its candela whatever its colour: every colour has a luminance of 1', () => {
  for (const kelvin of [1800, 2400, 3200, 4300, 5600, 6500, 10000])
    expect(luminanceOf(colourOfKelvin(kelvin))).toBeCloseTo(1, 6);
  expect(luminanceOf(colourOfLamp(lamp({ tint: '#3a7bff' })))).toBeCloseTo(1, 6);
});

test('6500 K is white on a screen, to a fiftieth; warmer is redder, cooler is bluer', () => {
  for (const channel of colourOfKelvin(6500)) expect(Math.abs(channel - 1)).toBeLessThan(0.05);
  const [warmRed, , warmBlue] = colourOfKelvin(2700);
  const [coolRed, , coolBlue] = colourOfKelvin(9000);
  expect(warmRed).toBeGreaterThan(warmBlue);
  expect(coolBlue).toBeGreaterThan(coolRed);
});

test('a colour as written becomes light by the sRGB curve', () => {
  expect(colourOfHex('#ffffff')).toEqual([1, 1, 1]);
  expect(colourOfHex('#808080')[0]).toBeCloseTo(0.2159, 4);
});

test('a lamp is half as strong at half its beam angle and a tenth at half its field angle', () => {
  for (const [beam, field] of [
    [25, 38],
    [40, 62],
    [110, 150],
    [120, 168.5],
  ] as const) {
    const at = (degrees: number) => beamShare(beam, field, Math.cos((degrees * Math.PI) / 180));
    expect(at(0)).toBe(1);
    expect(at(beam / 2)).toBeCloseTo(0.5, 9);
    expect(at(field / 2)).toBeCloseTo(0.1, 9);
  }
});

test('the cone that three is given carries both angles', () => {
  const { angle, penumbra } = coneOf(25, 38);
  expect(angle).toBeCloseTo((19 * Math.PI) / 180, 9);
  expect(angle * (1 - penumbra)).toBeCloseTo((12.5 * Math.PI) / 180, 9);
});

test('illuminance on the axis is candela over metres squared, half of it at half the beam angle', () => {
  expect(luxAt(spotOfLamp(lamp({}), rows, false, true), [0, 0, -5])).toBeCloseTo(4, 10);
  const off = (15 * Math.PI) / 180;
  expect(
    luxAt(spotOfLamp(lamp({}), rows, false, true), [5 * Math.sin(off), 0, -5 * Math.cos(off)]),
  ).toBeCloseTo(2, 10);
});

test('gathered bulbs keep all their candela, and no item is left out while there are lights for it', () => {
  const string = Array.from({ length: 20 }, (_, k) =>
    lamp({ itemId: 'string', position: [k, 2, 0], peakCandela: 10 }),
  );
  const all = [...string, lamp({ itemId: 'door', position: [0, 3, 5], peakCandela: 70 })];
  const lights = gathered(all, 5);
  expect(lights).toHaveLength(5);
  expect(lights.reduce((sum, { candela }) => sum + candela, 0)).toBeCloseTo(270, 9);
  expect(lights.filter(({ candela }) => candela === 50)).toHaveLength(4);
  expect(lights.find(({ candela }) => candela === 70)?.position).toEqual([0, 3, 5]);
});
