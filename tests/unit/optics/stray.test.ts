import { describe, expect, test } from 'vitest';
import { greyElectrons, photositesIn, signalToNoise } from '../../../src/core/optics/grain';
import {
  filterShares,
  HALATION_RADIUS_MM,
  halationShares,
  LENS_SPREAD,
  MIST_SPREAD,
  mistShare,
  STREAK_FALL,
  STREAK_FLOOR,
  STREAK_THICKNESS,
  streakPeak,
  streakReach,
} from '../../../src/core/optics/stray';

test('what a kernel spreads is all of what it takes', () => {
  for (const spread of [LENS_SPREAD, MIST_SPREAD]) {
    expect(spread.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  }
});

describe('a filter', () => {
  test('of strength 1 spreads a fifth, a quarter of it 5.4 %, and two stack', () => {
    expect(mistShare(0)).toBe(0);
    expect(mistShare(1)).toBeCloseTo(0.2, 12);
    // 1 − 0.8^(1/4).
    expect(mistShare(0.25)).toBeCloseTo(0.05426, 5);
    expect(1 - (1 - mistShare(0.5)) * (1 - mistShare(1.5))).toBeCloseTo(mistShare(2), 12);
  });

  test('of halation takes most of the red and hardly any of the blue, a quarter millimetre away', () => {
    const [red, green, blue] = halationShares(1);
    expect(red).toBeGreaterThan(4 * green);
    expect(green).toBeGreaterThan(4 * blue);
    // 2 × 0.13 mm × tan(asin(1/1.48)).
    expect(HALATION_RADIUS_MM).toBeCloseTo(2 * 0.13 * Math.tan(Math.asin(1 / 1.48)), 9);
  });

  test('does one thing, and nothing without strength', () => {
    expect(filterShares(undefined)).toEqual({ mist: 0, halation: [0, 0, 0] });
    expect(filterShares({ kind: 'mist', strength: 0 })).toEqual({ mist: 0, halation: [0, 0, 0] });
    expect(filterShares({ kind: 'mist', strength: 1 }).halation).toEqual([0, 0, 0]);
    expect(filterShares({ kind: 'halation', strength: 1 }).mist).toBe(0);
  });
});

describe('a streak', () => {
  const frame = { tanHalfWidth: 0.3, tanHalfHeight: 0.125 };

  test('holds its share of the light', () => {
    const peak = streakPeak(2, frame);
    // Along the streak 1/(1 + x/w)² has the area 2w, across it the bell √(2π) σ.
    const area = 2 * STREAK_FALL * 0.6 * Math.sqrt(2 * Math.PI) * STREAK_THICKNESS * 0.25;
    expect((peak * area) / 2).toBeCloseTo(0.0004, 9);
  });

  test('begins at a threshold and grows with the light, as its root', () => {
    const grey = 2;
    expect(streakReach(STREAK_FLOOR * grey, grey)).toBe(0);
    expect(streakReach(STREAK_FLOOR * grey * 1.01, grey)).toBeGreaterThan(0);
    // A hundred times the floor: nine times the distance at which it is a quarter.
    expect(streakReach(100 * STREAK_FLOOR * grey, grey)).toBeCloseTo(9 * STREAK_FALL, 9);
    expect(streakReach(10, 2)).toBeGreaterThan(streakReach(10, 4));
  });
});

describe('noise', () => {
  test('photons of middle grey: 700 of them at ISO 800 stand 26 times above, a quarter of them 13 times', () => {
    expect(greyElectrons(800)).toBe(700);
    // 700/√709 and 175/√184, by hand.
    expect(signalToNoise(800)).toBeCloseTo(26.289, 3);
    expect(signalToNoise(3200)).toBeCloseTo(12.901, 3);
    expect(signalToNoise(800, 0.25)).toBeCloseTo(signalToNoise(3200), 12);
  });

  test('a pixel that stands for many photosites is as much calmer, and none stands for less than one', () => {
    expect(photositesIn([0.033, 0.033])).toBeCloseTo(16, 9);
    expect(photositesIn([0.001, 0.001])).toBe(1);
  });
});
