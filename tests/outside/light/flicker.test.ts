import { describe, expect, test } from 'vitest';
import { flickerSafety, flickerStops, safeAngles, safeRates } from '../../../src/core/light/flickerSafe';

describe('shutter angles that are safe under mains lamps', () => {
  test('25 frames under 60 Hz: 75°, 150°, 225°, 300°', () => {
    // Source: [flicker-safe-angles]
    expect(safeAngles(25, 60)).toEqual([75, 150, 225, 300]);
  });

  // 360 fps n ÷ (2 Hz), by hand.
  test.each([
    [24, 50, [86.4, 172.8, 259.2, 345.6]],
    [30, 50, [108, 216, 324]],
    [24, 60, [72, 144, 216, 288, 360]],
    [120, 60, [360]],
    [240, 60, []],
  ] as const)('%d frames under %d Hz', (fps, hertz, angles) => {
    const found = safeAngles(fps, hertz);
    expect(found).toHaveLength(angles.length);
    found.forEach((angle, k) => {
      expect(angle).toBeCloseTo(angles[k], 9);
    });
  });
});

test('frame rates that are safe under 60 Hz whatever the shutter: 120 divided', () => {
  // The table leaves out 17.14 and 13.33, which are no whole frame rates. Source: [flicker-safe-rates]
  const whole = safeRates(60, 10).filter((rate) => Math.abs(rate - Math.round(rate)) < 1e-9);
  expect(whole.filter((rate) => rate <= 60)).toEqual([60, 40, 30, 24, 20, 15, 12, 10]);
  for (const framesPerSecond of whole)
    expect(flickerStops({ framesPerSecond, shutterDegrees: 173 }, 60)).toBe(0);
});

describe('24 frames at 180° under 50 Hz', () => {
  const safety = flickerSafety({ framesPerSecond: 24, shutterDegrees: 180 }, 50);

  test('is not safe: 172.8° is, and so are 25 frames', () => {
    expect(safety.safeBy).toBeNull();
    expect(safety.nearestAngle).toBeCloseTo(172.8, 9);
    expect(safety.nearestRate).toBeCloseTo(25, 9);
    expect(flickerSafety({ framesPerSecond: 24, shutterDegrees: 172.8 }, 50).safeBy).toBe('angle');
    expect(flickerSafety({ framesPerSecond: 25, shutterDegrees: 180 }, 50).safeBy).toBe('angle');
  });

  test('lets a lamp that goes out between pulses swing by 0.114 stops, more than the eye overlooks', () => {
    // 2.0833 pulses: sin(0.2618) ÷ 6.545 = 0.03955; log2(1.03955 ÷ 0.96045).
    expect(safety.stops).toBeCloseTo(0.1142, 3);
    expect(safety.shows).toBe(true);
  });

  test('matches the mean of the pulses summed over the exposure', () => {
    const mean = (start: number) => {
      const [steps, open] = [2000, 1 / 48];
      let sum = 0;
      for (let k = 0; k < steps; k += 1)
        sum += 1 + Math.cos(2 * Math.PI * 100 * (start + ((k + 0.5) / steps) * open));
      return sum / steps;
    };
    const all = Array.from({ length: 240 }, (_, frame) => mean(frame / 24 + frame * 1e-4));
    expect(Math.log2(Math.max(...all) / Math.min(...all))).toBeCloseTo(safety.stops, 3);
  });
});

test('a rate in step with the pulses is safe by that alone; 24 frames at 180° under 60 Hz', () => {
  const safety = flickerSafety({ framesPerSecond: 24, shutterDegrees: 180 }, 60);
  expect([safety.safeBy, safety.stops, safety.shows]).toEqual(['rate', 0, false]);
  expect(safety.nearestAngle === 144 || safety.nearestAngle === 216).toBe(true);
});
