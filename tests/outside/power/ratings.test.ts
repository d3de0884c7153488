import { describe, expect, test } from 'vitest';
import { GENERATOR_CLASSES } from '../../../src/core/kit/powerClasses';
import { burnAt } from '../../../src/core/power/fuel';
import { powerOf } from '../../../src/core/power/powerOf';
import { CONTINUOUS_SHARE } from '../../../src/core/power/ratings';
import { powerReport } from '../../../src/core/report/power/powerReport';
import { cable, drawing, generator, wired } from '../../plans/wired';

/** A load right at a generator, so that nothing is lost on the way. */
const beside = (watts: number, factor: number, volts = 120, amps = 20) =>
  wired([
    generator('genny', { volts, circuits: [{ amps, sockets: 1 }] }),
    drawing('load', watts, factor),
    cable('cord', 'genny', 'load', 1e-6),
  ]);
const ampsOf = (watts: number, factor: number, volts: number): number =>
  powerOf(beside(watts, factor, volts)).flow.loads.get('load')?.amps ?? Number.NaN;

describe('amps', () => {
  /** P ÷ (V × power factor), from any textbook. */
  test('of a kilowatt: 8.333 at 120 V, 4.348 at 230 V', () => {
    expect(ampsOf(1000, 1, 120)).toBeCloseTo(8.333, 3);
    expect(ampsOf(1000, 1, 230)).toBeCloseTo(4.348, 3);
  });

  test('of 1,800 W at a power factor of 0.6: 25 at 120 V, 3,000 VA', () => {
    const { flow } = powerOf(beside(1800, 0.6));
    expect(flow.loads.get('load')?.amps).toBeCloseTo(25, 3);
    expect(flow.loads.get('load')?.voltAmperes).toBeCloseTo(3000, 6);
  });
});

describe('continuous load', () => {
  /** Source: [continuous-load] */
  test('a breaker of 20 A is good for 16 A, 1,920 W at 120 V', () => {
    expect(20 * CONTINUOUS_SHARE).toBe(16);
    expect(powerOf(beside(1919, 1)).circuits[0].continuousShare).toBeLessThan(1);
    expect(powerOf(beside(1921, 1)).circuits[0].continuousShare).toBeGreaterThan(1);
    expect(powerReport(beside(1919, 1)).sentences.filter(({ about }) => about === 'breaker')).toEqual([]);
    expect(powerReport(beside(1921, 1)).sentences).toContainEqual(
      expect.objectContaining({ about: 'breaker', standing: 'breaks' }),
    );
  });

  test('24 A for hours ask for a breaker of 30 A: 125 %. Source: [continuous-load]', () => {
    expect(powerOf(beside(24 * 120, 1, 120, 30)).circuits[0].continuousShare).toBeCloseTo(1, 6);
  });
});

describe('burn', () => {
  /**
   * Litres an hour at a quarter, a half, three quarters and all of a diesel set of 20, 60 and 100 kW, "approximate", from
   * oer.enviraj.com, general, diesel generator fuel consumption chart. The source prints gallons; these are its litres.
   */
  const CHART = [
    [20, [2.3, 3.4, 4.9, 6.1]],
    [60, [6.8, 11, 14.4, 18.2]],
    [100, [9.8, 15.5, 22, 28]],
  ] as const;

  test.each(CHART)(
    'of a set of %d kW is the chart at its four loads, and between them in between',
    (_, burn) => {
      for (const [k, litres] of burn.entries()) expect(burnAt(burn, (k + 1) / 4)).toBeCloseTo(litres, 12);
      expect(burnAt(burn, 0.625)).toBeCloseTo((burn[1] + burn[2]) / 2, 12);
      expect(burnAt(burn, 0.1)).toBeLessThan(burn[0]);
      expect(burnAt(burn, 0)).toBeGreaterThan(0);
    },
  );

  test('without load is 20 to 60 % of full, for the classes here too. Source: [generator-burn]', () => {
    for (const { power, word } of GENERATOR_CLASSES) {
      const { litresPerHour } = power[230];
      expect(burnAt(litresPerHour, 0) / litresPerHour[3], word).toBeGreaterThan(0.15);
      expect(burnAt(litresPerHour, 0) / litresPerHour[3], word).toBeLessThan(0.6);
    }
  });

  /** 2,000 W sets: 4 to 8 hours on a US gallon at half to a quarter load (visualfoodie.com, how much fuel). */
  test('the class of 2 kW lasts 4 to 9 hours on a gallon between half and a quarter of its load', () => {
    const small = GENERATOR_CLASSES.find(({ word }) => word.startsWith('Generator, 2'));
    if (!small) throw new Error('no class of 2 kW');
    const hours = (share: number): number => 3.785 / burnAt(small.power[120].litresPerHour, share);
    expect(hours(0.5)).toBeGreaterThan(4);
    expect(hours(0.25)).toBeLessThan(9);
  });
});
