import { describe, expect, test } from 'vitest';
import { conversionShare, convertedKelvin } from '../../../src/core/form/photometry/conversion';
import { radiance, seenOf } from '../../../src/core/form/photometry/fullRadiator';

const stopsTaken = (from: number, to: number): number =>
  -Math.log2(conversionShare(from, 1e6 / to - 1e6 / from));

describe('a full radiator', () => {
  test('is brightest where Wien has it: λ T = 2897.8 µm K, from memory', () => {
    for (const kelvin of [3000, 5500, 10000]) {
      const peak = 2.8978e6 / kelvin;
      for (const aside of [0.99, 1.01])
        expect(radiance(peak * aside, kelvin)).toBeLessThan(radiance(peak, kelvin));
    }
  });

  test('gives 683 lm a watt at most: of 5800 K, cut off at the ends of the eye’s curve, about 251 lm a watt', () => {
    // Luminous efficacy, ideal sources: truncated 5800 K blackbody 251 lm/W (primidi.com/luminous_efficacy).
    let watts = 0;
    for (let nanometres = 400; nanometres < 700; nanometres += 1) watts += radiance(nanometres + 0.5, 5800);
    expect((683 * seenOf((nanometres) => radiance(nanometres, 5800))) / watts / 251).toBeCloseTo(1, 1);
  });
});

describe('a conversion gel', () => {
  // Source: [conversion-filters], stops by the temperatures that they lead from and to. They are weighed by film, ours
  // by the eye, and theirs are dyes: a third of a stop, as finely as they are printed.
  test.each([
    [3200, 5500, 2],
    [3400, 5500, 1 + 2 / 3],
    [3800, 5500, 1],
    [5500, 3800, 1 / 3],
    [5500, 3400, 2 / 3],
    [5500, 3200, 2 / 3],
  ])('from %i K to %i K takes %d stops', (from, to, stops) => {
    expect(Math.abs(stopsTaken(from, to) - stops)).toBeLessThan(1 / 3);
  });

  test('moves the white by its mired: 3200 K to 5500 K are 131 mired', () => {
    expect(convertedKelvin(3200, -131)).toBeCloseTo(5510, 0);
    expect(convertedKelvin(5500, 131)).toBeCloseTo(3197, 0);
    expect(convertedKelvin(3200, 0)).toBe(3200);
    expect([convertedKelvin(20000, -300), convertedKelvin(1200, 300)]).toEqual([40000, 1000]);
  });

  test('takes more the stronger it is, and nothing is nothing', () => {
    expect(conversionShare(3200, 0)).toBe(1);
    for (const sign of [-1, 1])
      for (const mired of [20, 60, 130, 200])
        expect(conversionShare(4300, sign * (mired + 10))).toBeLessThan(conversionShare(4300, sign * mired));
  });
});
