import { describe, expect, test } from 'vitest';
import {
  askedLux,
  ev100OfLux,
  greyLuminance,
  luminanceOfEv100,
  luxOfEv100,
  stopsBetween,
} from '../../../src/core/light/exposure';
import { formatLight, LUX_PER_FOOTCANDLE, parseLight } from '../../../src/core/units/illuminance';

const base = { stop: 2.8, iso: 800, shutterDegrees: 180, framesPerSecond: 24, ndStops: 0 };

describe('exposure values', () => {
  // EV for ISO 100, lux (C = 250), footcandles. Source: [exposure-values]
  test.each([
    [-3, 0.313, 0.029],
    [0, 2.5, 0.232],
    [4, 40, 3.72],
    [6, 160, 14.9],
    [8, 640, 59.5],
    [10, 2560, 238],
  ])('EV %d is %d lx and %d fc', (ev, lux, footcandles) => {
    expect(luxOfEv100(ev) / lux).toBeCloseTo(1, 2);
    expect(luxOfEv100(ev) / LUX_PER_FOOTCANDLE / footcandles).toBeCloseTo(1, 2);
    expect(ev100OfLux(luxOfEv100(ev))).toBeCloseTo(ev, 9);
  });

  // EV for ISO 100, cd/m² (K = 12.5). Source: [exposure-values]
  test.each([
    [0, 0.125],
    [3, 1],
    [5, 4],
    [8, 32],
    [12, 512],
  ])('EV %d is %d cd/m²', (ev, luminance) => {
    expect(luminanceOfEv100(ev)).toBeCloseTo(luminance, 9);
  });
});

describe('what a stop asks for', () => {
  test('T2.8 at ISO 800, 24 frames, 180°: 117.6 lx', () => {
    expect(askedLux(base)).toBeCloseTo(117.6, 1);
  });

  test('T4 at ISO 800 and 1/48 s: 240 lx, 22.3 fc, a tenth of a stop from the rule of 25', () => {
    const lux = askedLux({ ...base, stop: 4 });
    expect(lux).toBeCloseTo(240, 6);
    expect(lux / LUX_PER_FOOTCANDLE).toBeCloseTo(22.3, 1);
    // fc = 25 T² ÷ (ISO t), a rule of the trade; common practice, no source.
    const rule = (25 * 16 * 48) / 800;
    expect(stopsBetween(lux / LUX_PER_FOOTCANDLE, rule)).toBeCloseTo(0.11, 2);
  });

  test('a stop of filter asks for twice the light', () => {
    expect(askedLux({ ...base, ndStops: 1 }) / askedLux(base)).toBeCloseTo(2, 9);
    const both = { ...base, ndStops: 1.5, filterLossStops: 0.5 };
    expect(askedLux(both) / askedLux(base)).toBeCloseTo(4, 9);
    expect(greyLuminance(both) / greyLuminance(base)).toBeCloseTo(4, 9);
  });
});

test('T16 at 1/125 s and ISO 100, the exposure of bright sun, is EV 15 but for the rounding of the numbers', () => {
  // 16² · 125 = 2^14.97. Source: [exposure-values]
  const sun = { stop: 16, iso: 100, shutterDegrees: 360, framesPerSecond: 125, ndStops: 0 };
  expect(ev100OfLux(askedLux(sun))).toBeCloseTo(14.97, 2);
});

test('the two constants of a meter agree on a grey of 15.7 %', () => {
  // π K ÷ C. Source: [meter-constants]
  expect((Math.PI * greyLuminance(base)) / askedLux(base)).toBeCloseTo(0.157, 3);
});

describe('lux and footcandles', () => {
  test('a footcandle is 10.76391 lx', () => {
    // Source: [gnu-units]
    expect(LUX_PER_FOOTCANDLE).toBeCloseTo(10.76391, 5);
  });

  test('are printed by their size and read back', () => {
    expect(formatLight(420.4, 'lx')).toBe('420\u00a0lx');
    expect(formatLight(3.61, 'lx')).toBe('3.6\u00a0lx');
    expect(formatLight(0.27, 'lx')).toBe('0.27\u00a0lx');
    expect(formatLight(420, 'fc')).toBe('39\u00a0fc');
    const read = (text: string, unit: 'lx' | 'fc') => {
      const parsed = parseLight(text, unit);
      return parsed.ok ? parsed.value : null;
    };
    expect(read('420', 'lx')).toBe(420);
    expect(read('39 fc', 'lx')).toBeCloseTo(419.79, 2);
    expect(read('2', 'fc')).toBeCloseTo(21.53, 2);
    expect(read('420 lux', 'fc')).toBe(420);
    expect(read('-1', 'lx')).toBeNull();
    expect(read('bright', 'lx')).toBeNull();
  });
});
