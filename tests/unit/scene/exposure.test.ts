import { expect, test } from 'vitest';
import { greyLuminance } from '../../../src/core/light/exposure';
import { colourOfKelvin } from '../../../src/scene/light/kelvin';
import { exposureOf } from '../../../src/scene/picture/exposure';
import { smallRoof } from '../smallRoof';

const setup = smallRoof().setups[0];

test('middle grey is the luminance that a meter with K = 12.5 asks for', () => {
  // T2.8, ISO 800, 1/48 s: 12.5 × 7.84 × 48 / 800.
  expect(
    greyLuminance({ ...setup, stop: 2.8, iso: 800, shutterDegrees: 180, framesPerSecond: 24, ndStops: 0 }),
  ).toBeCloseTo(5.88, 6);
  // EV 0 at ISO 100 (1 s at f/1) is 0.125 cd/m².
  expect(
    greyLuminance({ ...setup, stop: 1, iso: 100, shutterDegrees: 360, framesPerSecond: 1, ndStops: 0 }),
  ).toBeCloseTo(0.125, 9);
});

test('a stop more light for a stop of anything', () => {
  const base = { ...setup, stop: 4, iso: 400, shutterDegrees: 180, framesPerSecond: 24, ndStops: 1 };
  const grey = exposureOf(base).perCandela;
  expect(exposureOf({ ...base, iso: 800 }).perCandela).toBeCloseTo(2 * grey, 9);
  expect(exposureOf({ ...base, stop: 4 * Math.SQRT2 }).perCandela).toBeCloseTo(grey / 2, 9);
  expect(exposureOf({ ...base, shutterDegrees: 90 }).perCandela).toBeCloseTo(grey / 2, 9);
  expect(exposureOf({ ...base, framesPerSecond: 48 }).perCandela).toBeCloseTo(grey / 2, 9);
  expect(exposureOf({ ...base, ndStops: 2 }).perCandela).toBeCloseTo(grey / 2, 9);
});

test('light of the white that is balanced for comes out neutral, warmer light warm and cooler light cool', () => {
  const through = (kelvin: number, balanceKelvin: number) => {
    const { gains } = exposureOf({ ...setup, balanceKelvin });
    return colourOfKelvin(kelvin).map((channel, k) => channel * gains[k]);
  };
  for (const kelvin of [2700, 3200, 4300, 5600]) {
    for (const channel of through(kelvin, kelvin)) expect(channel).toBeCloseTo(1, 9);
    const [[red, , blue], [coolRed, , coolBlue]] = [
      through(kelvin, kelvin + 1500),
      through(kelvin + 1500, kelvin),
    ];
    expect(red).toBeGreaterThan(blue);
    expect(coolBlue).toBeGreaterThan(coolRed);
  }
});
