import { describe, expect, test } from 'vitest';
import { airMass, moonFootcandles, scatteredMoonlight, throughAir } from '../../../src/core/sky/moonlight';
import { twilightLux } from '../../../src/core/sky/twilight';

/**
 * Lux on level ground by altitude, phase angle and parallax, by cubics of the logarithm.
 * Source: the almanac office's circular 171, as written out in a public repository (EranOfek/AstroPack, moonlight.m).
 */
function levelLux(altitude: number, phase: number, parallax = 0.951): number {
  const x = altitude / 90;
  const [a, b, c, d] = altitude > 20 ? [-1.95, 4.06, -4.24, 1.56] : [-2.58, 12.58, -42.58, 59.06];
  const height = a + b * x + c * x * x + d * x ** 3;
  return 10 ** (height - 8.68e-3 * phase - 2.2e-9 * phase ** 4 + 2 * Math.log10(parallax / 0.951));
}

const ours = (altitude: number, phase: number): number =>
  moonFootcandles(phase) * 10.76391 * throughAir(airMass(altitude)) * Math.sin((altitude * Math.PI) / 180);

describe('moonlight', () => {
  test('of a full moon overhead is about 0.27 lx', () => {
    // Source: ayton.id.au/gary/photo/photo_exp1.htm
    expect(ours(90, 0)).toBeGreaterThan(0.24);
    expect(ours(90, 0)).toBeLessThan(0.3);
  });

  test.each([90, 60, 40, 25, 15, 10])('%d° up is within half a stop of another formula', (altitude) => {
    for (const phase of [0, 30, 60, 90, 120])
      expect(Math.abs(Math.log2(ours(altitude, phase) / levelLux(altitude, phase)))).toBeLessThan(0.5);
  });

  test('makes a clear sky about as bright as it is metered under a full moon', () => {
    // Source: 18 magnitudes to the square second of arc, common in site surveys, from memory; to a stop.
    const luminance = scatteredMoonlight(0.25, 45, 60);
    expect(Math.abs(Math.log2(luminance / (108000 * 10 ** (-0.4 * 18))))).toBeLessThan(1);
  });
});

test.each([
  [-6, 3.4],
  [-12, 0.008],
  [-18, 0.00065],
])('with the sun at %d° the ground has %d lx', (altitude, lux) => {
  // Source: printed limits of civil, nautical and astronomical twilight, from memory.
  expect(Math.abs(twilightLux(altitude) / lux - 1)).toBeLessThan(0.05);
});
