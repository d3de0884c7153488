import { FloatType } from 'three';
import { IESLoader } from 'three/addons/loaders/IESLoader.js';
import { describe, expect, test } from 'vitest';
import { candelaTable, fullAngleDegrees } from '../../../../src/core/form/photometry/candelaTable';
import type { Distribution } from '../../../../src/core/plan/schema/distribution';
import { readLm63 } from '../../../../src/exchange/lm63/readLm63';
import { AXIAL_LM63, lm63Of, steps } from './axial';
import { DOWNLIGHT_LM63, DOWNLIGHT_LUMENS } from './downlight';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

function read(text: string): Distribution {
  const file = readLm63(text, 'lamp.ies');
  if (!file.ok) throw new Error(file.faults[0].sentence);
  return file.value.distribution;
}

describe('the file of a test report. Source: [axial-candela]', () => {
  const distribution = read(AXIAL_LM63);
  const table = candelaTable(distribution);

  test('comes to its 532 lm within 0.2 %, and exactly to 531.80 by straight lines', () => {
    expect(Math.abs(table.lumens / 532 - 1)).toBeLessThan(0.002);
    expect(table.lumens).toBeCloseTo(531.8, 1);
  });

  test('has its beam of 87.1° and its field of 137.9°', () => {
    expect(table.beamDegrees).toBeCloseTo(87.1, 1);
    expect(table.fieldDegrees).toBeCloseTo(137.9, 1);
    expect(fullAngleDegrees(distribution, 90, 0.5)).toBeCloseTo(87.1, 1);
  });

  test('gives its candela at its angles and half way between two', () => {
    expect(table.peakCandela).toBe(269);
    expect(table.candelaAt(30, 0)).toBe(200);
    expect(table.candelaAt(31.25, 77)).toBe(194.5);
    expect(table.candelaAt(90.01, 0)).toBe(0);
  });
});

describe('the file of another lamp, an edition older. Source: [downlight-candela]', () => {
  const file = readLm63(DOWNLIGHT_LM63, 'lamp.ies');
  if (!file.ok) throw new Error(file.faults[0].sentence);
  const table = candelaTable(file.value.distribution);

  test('comes to the 1,218 lm that it says, within 0.3 %', () => {
    expect(Math.abs(table.lumens / DOWNLIGHT_LUMENS - 1)).toBeLessThan(0.003);
  });

  test('has its watts and its round opening, its peak straight on, and a beam between the angles of half of it', () => {
    expect(file.value.year).toBe(1995);
    expect(file.value.watts).toBe(14);
    expect(file.value.openingMetres[0]).toBe(-0.12);
    expect(table.peakCandela).toBe(2225.9);
    // 1,112.95 cd lies between 15° with 1,182.9 and 17.5° with 1,045.2.
    expect(table.beamDegrees).toBeGreaterThan(30);
    expect(table.beamDegrees).toBeLessThan(35);
    expect(table.candelaAt(37.5, 200)).toBe(388.7);
  });
});

test('a cosine lamp of 1,000 cd comes to π times a thousand, within half a per cent by steps of 10°', () => {
  const table = candelaTable(read(lm63Of(steps(0, 90, 10), [0], (v) => 1000 * Math.cos(radians(v)))));
  expect(Math.abs(table.lumens / (1000 * Math.PI) - 1)).toBeLessThan(0.005);
  expect(Math.abs(table.beamDegrees - 120)).toBeLessThan(0.3);
});

test('an even cone of half angle 30° with 1,187.95 cd comes to 1,000 lm', () => {
  const cone = lm63Of([0, 30, 30.0001, 90], [0], (v) => (v <= 30 ? 1187.95 : 0));
  expect(Math.abs(candelaTable(read(cone)).lumens / 1000 - 1)).toBeLessThan(0.001);
});

test('an even ball of 100 cd, from nadir to zenith, comes to 400 π lm and is all round', () => {
  const ball = candelaTable(read(lm63Of(steps(0, 180, 15), steps(0, 360, 30), () => 100)));
  expect(ball.lumens).toBeCloseTo(400 * Math.PI, 6);
  expect(ball.beamDegrees).toBe(360);
});

test.each([
  ['0 to 90', steps(0, 90, 15)],
  ['0 to 180', steps(0, 180, 15)],
  ['90 to 270', steps(90, 270, 15)],
  ['0 to 360', steps(0, 360, 15)],
])('a lamp that is mirrored both ways reads the same from %s', (_, horizontal) => {
  // Twice as wide across as up and down.
  const candela = (v: number, h: number): number =>
    1000 * Math.exp(-((v * v) / 800) * (1 + 3 * Math.sin(radians(h)) ** 2));
  const table = candelaTable(read(lm63Of(steps(0, 90, 5), horizontal, candela)));
  for (const [v, h] of [
    [0, 0],
    [20, 15],
    [20, 165],
    [20, 195],
    [35, 345],
    [10, -90],
    [10, 450],
  ])
    expect(table.candelaAt(v, h)).toBeCloseTo(Number(candela(v, h).toPrecision(7)), 3);
  const whole = candelaTable(read(lm63Of(steps(0, 90, 5), steps(0, 360, 15), candela)));
  expect(table.lumens).toBeCloseTo(whole.lumens, 6);
});

describe('types A and B', () => {
  const grid = steps(-90, 90, 5);
  // A cosine lamp: the share of a direction along the axis, by each type's own angles.
  const ahead = (v: number, h: number): number => 1000 * Math.cos(radians(v)) * Math.cos(radians(h));

  test.each([
    ['A', 3],
    ['B', 2],
  ] as const)('a cosine lamp in type %s is one in type C', (_, type) => {
    const table = candelaTable(read(lm63Of(grid, grid, (v, h) => Math.max(0, ahead(v, h)), type)));
    expect(Math.abs(table.lumens / (1000 * Math.PI) - 1)).toBeLessThan(0.003);
    for (const off of [0, 20, 45, 70])
      for (const round of [0, 35, 90, 200])
        expect(Math.abs(table.candelaAt(off, round) - 1000 * Math.cos(radians(off)))).toBeLessThan(4);
  });

  test('a strip of light is upright where only its horizontal angle is narrow', () => {
    const strip = (_v: number, h: number): number => (Math.abs(h) <= 10 ? 500 : 0);
    const table = candelaTable(read(lm63Of(grid, grid, strip, 3)));
    expect(table.candelaAt(40, 90)).toBeCloseTo(500, 6);
    expect(table.candelaAt(40, 270)).toBeCloseTo(500, 6);
    expect(table.candelaAt(40, 0)).toBe(0);
  });

  test('one that gives a quarter is mirrored', () => {
    const quarter = lm63Of(steps(0, 90, 5), steps(0, 90, 5), (v, h) => Math.max(0, ahead(v, h)), 2);
    expect(candelaTable(read(quarter)).candelaAt(30, 225)).toBeCloseTo(866, -1);
  });
});

describe("three's own reader of such files, which gives the shape as shares of the peak", () => {
  const shapeOf = (text: string): { readonly data: ArrayLike<number>; readonly height: number } => {
    const loader = Object.assign(new IESLoader(), { type: FloatType });
    const { image } = loader.parse(text.replaceAll('\r\n', '\n'));
    if (!(image.data instanceof Float32Array)) throw new Error('the shape is no list of numbers');
    return { data: image.data, height: image.height };
  };

  test('has the same shape for the axial file', () => {
    const { data } = shapeOf(AXIAL_LM63);
    const table = candelaTable(read(AXIAL_LM63));
    for (let k = 0; k < 90; k += 1) expect(table.candelaAt((k * 180) / 179, 0) / 269).toBeCloseTo(data[k], 6);
  });

  test('and for the older one', () => {
    const { data } = shapeOf(DOWNLIGHT_LM63);
    const table = candelaTable(read(DOWNLIGHT_LM63));
    for (let k = 0; k < 90; k += 1)
      expect(table.candelaAt((k * 180) / 179, 0) / table.peakCandela).toBeCloseTo(data[k], 5);
  });

  test('and for one with planes of its own', () => {
    const text = lm63Of(steps(0, 90, 5), steps(0, 180, 30), (v, h) => 900 * Math.cos(radians(v)) + h);
    const { data } = shapeOf(text);
    const table = candelaTable(read(text));
    for (const h of [0, 17, 90, 144, 180, 233, 359])
      for (const k of [1, 22, 44, 80])
        expect(table.candelaAt((k * 180) / 179, h) / table.peakCandela).toBeCloseTo(data[k + h * 180], 6);
  });
});
