import { describe, expect, test } from 'vitest';
import { beaufortOf, milesPerHour } from '../../../src/core/cautions/wind/beaufort';
import { plateCoefficient, pressureOf } from '../../../src/core/cautions/wind/drag';
import { ballastNeeded, type Standing, tippingWind } from '../../../src/core/cautions/wind/tipping';

const POUND_FORCE = 4.4482216;
const FOOT = 0.3048;

const plateDrag = (width: number, height: number, metresPerSecond: number): number =>
  pressureOf(metresPerSecond) * plateCoefficient(width, height) * width * height;

describe('drag on a plate', () => {
  // ficientdesign.com/wind-resistance-drag-coefficient: a sign of 4 by 8 feet in 90 mph with a coefficient of 1.28.
  test('a published sign', () => {
    const pounds = (pressureOf(90 * 0.44704) * 1.28 * 4 * 8 * FOOT * FOOT) / POUND_FORCE;
    // Its air is 0.00238 slug a cubic foot, 1.2266 kg/m³.
    expect(pounds * (1.2266 / 1.225)).toBeGreaterThan(848);
    expect(pounds * (1.2266 / 1.225)).toBeLessThan(850);
  });

  // (80 ÷ 60)² by hand: no source but the square in the formula.
  test('from 60 to 80 mph the force is 1.78 times as much', () => {
    expect(plateDrag(1, 1, 80) / plateDrag(1, 1, 60)).toBeCloseTo(1.78, 2);
  });

  // Aeronautical Engineer's Data Book, figure 5.13.
  test('a square plate has 1.17, an endless one 1.98', () => {
    expect(plateCoefficient(2, 2)).toBeCloseTo(1.17, 9);
    expect(plateCoefficient(1e9, 1)).toBeCloseTo(1.98, 6);
  });

  // ½ × 1.225 × 8² × 1.17 × 1.2² by hand, with the figures of the data book and the standard atmosphere.
  test('a flag of 1.2 m in a fresh breeze', () => {
    expect(plateDrag(1.2, 1.2, 8)).toBeCloseTo(66.04, 1);
  });
});

/** A block on a rectangular foot, a plate square to its long sides at a height. */
const block = (halfX: number, halfZ: number, kilograms: number, sails: Standing['sails']): Standing => ({
  feet: [
    [-halfX, 0, -halfZ],
    [halfX, 0, -halfZ],
    [halfX, 0, halfZ],
    [-halfX, 0, halfZ],
  ],
  masses: [{ kilograms, at: [0, 1, 0] }],
  sails,
});

describe('tipping', () => {
  // ae.msstate.edu, statics, friction example 3: 250 lb, 32 inches wide, pushed at 66 inches: 250 × 16 ÷ 66 = 60.6 lb.
  test('a published block tips at the push that its weight holds', () => {
    const inch = 0.0254;
    const sails = [{ dragArea: 1, at: [0, 66 * inch, 0] as const, normal: [1, 0, 0] as const }];
    const standing = block(16 * inch, 400, (250 * POUND_FORCE) / 9.81, sails);
    const push = pressureOf(tippingWind(standing)) / POUND_FORCE;
    expect(push).toBeCloseTo((250 * 16) / 66, 1);
  });

  // 66.04 N at 3 m are 198.1 N m; 0.6 m from the edge 33.7 kg hold them.
  test('ballast for a flag of 1.2 m at 3 m on feet of 1.2 m', () => {
    const sails = [{ dragArea: 1.17 * 1.44, at: [0, 3, 0] as const, normal: [1, 0, 0] as const }];
    expect(ballastNeeded(block(0.6, 400, 0, sails), pressureOf(8), 1)).toBeCloseTo(33.7, 1);
  });
});

// delta-s.org/weer/beaufort.html: lowest and highest of each, m/s; oocities.org/tonleo_78749: mph.
const SCALE = [
  [0, 0, 0.2, 0, 0],
  [1, 0.3, 1.5, 1, 3],
  [2, 1.6, 3.3, 4, 7],
  [3, 3.4, 5.4, 8, 12],
  [4, 5.5, 7.9, 13, 18],
  [5, 8, 10.7, 19, 24],
  [6, 10.8, 13.8, 25, 31],
  [7, 13.9, 17.1, 32, 38],
  [8, 17.2, 20.7, 39, 46],
  [9, 20.8, 24.4, 47, 54],
  [10, 24.5, 28.4, 55, 63],
  [11, 28.5, 32.6, 64, 72],
] as const;

test.each(SCALE)('Beaufort %d is %d to %d m/s', (number, lowest, highest, from, to) => {
  expect([beaufortOf(lowest).number, beaufortOf(highest).number]).toEqual([number, number]);
  // Both tables are rounded from knots, each by itself, so miles agree to little more than one.
  expect(Math.abs(milesPerHour(lowest) - from)).toBeLessThan(1.2);
  expect(Math.abs(milesPerHour(highest) - to)).toBeLessThan(1.2);
});

test('from 32.7 m/s on it is a hurricane, and names are those of the scale', () => {
  expect(beaufortOf(32.7)).toEqual({ number: 12, name: 'hurricane force' });
  expect(beaufortOf(9)).toEqual({ number: 5, name: 'fresh breeze' });
  expect(beaufortOf(15)).toEqual({ number: 7, name: 'near gale' });
});
