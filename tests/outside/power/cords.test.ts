import { describe, expect, test } from 'vitest';
import {
  AWG_CORDS,
  awgAreaMm2,
  awgDiameterMm,
  copperFactor,
  MM2_CORDS,
} from '../../../src/core/kit/powerCords';
import { powerOf } from '../../../src/core/power/powerOf';
import { cable, drawing, generator, wired } from '../../plans/wired';

const ohmsPerThousandFeet = (awg: number): number => {
  const cord = AWG_CORDS.find(({ wire }) => 'awg' in wire && wire.awg === awg);
  return (cord?.ohmsPerMetre ?? Number.NaN) * 304.8;
};
const FEET = 0.3048;

describe('wire gauge', () => {
  test.each([
    [12, 2.0525],
    [16, 1.2908],
    [2, 6.5437],
  ])('%d AWG has a diameter of %d mm. Source: [wire-gauge]', (awg, diameterMm) => {
    expect(awgDiameterMm(awg)).toBeCloseTo(diameterMm, 3);
  });

  test.each([
    [14, 4110],
    [12, 6530],
    [10, 10380],
    [8, 16510],
  ])('%d AWG has %d circular mils in the printed table. Source: [conductor-properties]', (awg, mils) => {
    const own = (awgDiameterMm(awg) / 0.0254) ** 2;
    expect(Math.abs(own / mils - 1)).toBeLessThan(0.001);
    expect(awgAreaMm2(awg)).toBeCloseTo((Math.PI / 4) * awgDiameterMm(awg) ** 2, 12);
  });
});

describe('ohms of conductors', () => {
  test.each([
    [14, 3.14],
    [12, 1.98],
    [8, 0.778],
    [4, 0.308],
    [2, 0.194],
  ])('%d AWG has %d ohms per 1,000 ft at 75 °C. Source: [conductor-properties]', (awg, ohms) => {
    expect(ohmsPerThousandFeet(awg)).toBeCloseTo(ohms, 9);
  });

  /** Resistivity of annealed copper at 20 °C, 0.017241 Ω·mm²/m, and 0.393 % a kelvin: the international standard, from memory. */
  test('the table agrees with the gauge, copper and the temperature: solid wire within 1 %, strands 2 to 4 % above', () => {
    for (const { wire, ohmsPerMetre } of AWG_CORDS) {
      if (!('awg' in wire)) throw new Error('a cord of no gauge');
      const solid = (0.017241 / awgAreaMm2(wire.awg)) * copperFactor(75);
      expect(ohmsPerMetre / solid, `${wire.awg} AWG`).toBeGreaterThan(1.005);
      expect(ohmsPerMetre / solid, `${wire.awg} AWG`).toBeLessThan(1.045);
    }
    // Of solid 12 AWG the same table prints 1.93.
    expect((0.017241 / awgAreaMm2(12)) * copperFactor(75) * 304.8).toBeCloseTo(1.93, 2);
  });

  test('a meter at 20 °C finds some 82 % of the table at 75 °C. Source: [copper-temperature]', () => {
    expect(1 / copperFactor(75)).toBeCloseTo(0.82, 2);
    expect(1 / copperFactor(60)).toBeCloseTo(0.862, 2);
    expect(1 / copperFactor(90)).toBeCloseTo(0.781, 2);
  });

  test.each([
    [1.5, 13.3],
    [2.5, 7.98],
    [4, 4.95],
    [6, 3.3],
    [10, 1.91],
    [16, 1.21],
  ])('flexible %d mm² has %d ohms per km at 20 °C. Source: [flexible-conductors]', (mm2, ohms) => {
    const cord = MM2_CORDS.find(({ wire }) => 'mm2' in wire && wire.mm2 === mm2);
    expect(((cord?.ohmsPerMetre ?? 0) * 1000) / copperFactor(75)).toBeCloseTo(ohms, 9);
    expect(ohms / (17.241 / mm2)).toBeGreaterThan(1);
    expect(ohms / (17.241 / mm2)).toBeLessThan(1.18);
  });

  test.each([
    [18, 10],
    [16, 13],
    [14, 18],
    [12, 25],
  ])('a cord of %d AWG with two lines carries %d A. Source: [cord-ampacity]', (awg, amps) => {
    expect(AWG_CORDS.find(({ wire }) => 'awg' in wire && wire.awg === awg)?.amps).toBe(amps);
  });

  test('thicker cords resist less and carry more', () => {
    for (const cords of [AWG_CORDS, MM2_CORDS])
      for (const [k, cord] of cords.slice(1).entries()) {
        expect(cord.ohmsPerMetre).toBeLessThan(cords[k].ohmsPerMetre);
        expect(cord.amps).toBeGreaterThan(cords[k].amps);
        expect(cord.diameterMetres).toBeGreaterThan(cords[k].diameterMetres);
      }
  });
});

/** What a worked example loses whose amps are given: a load that draws just that many behind the cord. */
function lostVolts(amps: number, awg: number, feet: number): number {
  const volts = 120 - (2 * ohmsPerThousandFeet(awg) * feet * amps) / 1000;
  const plan = wired([
    generator('genny', { circuits: [{ amps: 60, sockets: 1 }], continuousWatts: 9000, peakWatts: 9000 }),
    drawing('load', amps * volts),
    cable('cord', 'genny', 'load', feet * FEET, { wire: { awg } }),
  ]);
  const load = powerOf(plan).flow.loads.get('load');
  expect(load?.amps).toBeCloseTo(amps, 6);
  return 120 - (load?.volts ?? 0);
}

describe('worked examples of voltage drop', () => {
  /** Source: [drop-limits]: 20 A, 120 V, 100 ft of 12 AWG: 7.9 V by K = 12.9, 6.6 %; with 8 AWG 3.1 V, 2.6 %. */
  test.each([
    [20, 12, 100, 7.9],
    [20, 8, 100, 3.1],
  ])('%d A through %d AWG of %d ft lose %d V', (amps, awg, feet, volts) => {
    expect(lostVolts(amps, awg, feet)).toBeCloseTo(volts, 1);
    const byFormula = (2 * 12.9 * amps * feet) / (awgDiameterMm(awg) / 0.0254) ** 2;
    expect(Math.abs(lostVolts(amps, awg, feet) / byFormula - 1)).toBeLessThan(0.01);
  });

  test('15 A through 100 ft of 12 AWG lose 5.94 V, 4.95 %. Source: [drop-formula], an example by its K', () => {
    expect(lostVolts(15, 12, 100)).toBeCloseTo(5.94, 1);
    expect(lostVolts(15, 12, 100) / 120).toBeCloseTo(0.0495, 3);
  });

  test('16 A through 100 ft of 12 AWG lose 6.34 V by the table. Source: [conductor-properties]', () => {
    expect(lostVolts(16, 12, 100)).toBeCloseTo(6.336, 3);
  });
});
