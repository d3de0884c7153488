import { describe, expect, test } from 'vitest';
import { powerOf } from '../../../src/core/power/powerOf';
import { box, cable, drawing, generator, wired } from '../../plans/wired';

/** What a load of constant power gets behind a loop of ohms: the larger root of V² − V0·V + R·S = 0. */
const closedForm = (open: number, loopOhms: number, voltAmperes: number): number =>
  (open + Math.sqrt(open * open - 4 * loopOhms * voltAmperes)) / 2;

/** Ohms of one conductor of 12 AWG of so many metres, by the table that cords are from. */
const ohms12 = (metres: number): number => ((1.98 / 1000) * metres) / 0.3048;

describe('one load behind one cord', () => {
  test.each([
    [350, 0.95, 30],
    [1800, 0.6, 20],
    [2400, 1, 60],
    [90, 0.5, 200],
  ])('%d W at a power factor of %d over %d m is what the quadratic says', (watts, factor, metres) => {
    const plan = wired([
      generator('genny'),
      drawing('load', watts, factor),
      cable('cord', 'genny', 'load', metres),
    ]);
    const { flow } = powerOf(plan);
    const expected = closedForm(120, 2 * ohms12(metres), watts / factor);
    const load = flow.loads.get('load');
    expect(load?.volts).toBeCloseTo(expected, 8);
    expect(load?.amps).toBeCloseTo(watts / factor / expected, 8);
    expect(load?.watts).toBeCloseTo(watts, 8);
    const loss = 2 * ohms12(metres) * (watts / factor / expected) ** 2;
    expect(flow.cords.get('cord')?.lossWatts).toBeCloseTo(loss, 8);
    expect(flow.sources.get('genny')?.watts).toBeCloseTo(watts + loss, 8);
    expect(flow.collapsed).toEqual([]);
  });

  test('a load that no voltage suffices for is named', () => {
    const plan = wired([generator('genny'), drawing('load', 8000), cable('cord', 'genny', 'load', 150)]);
    expect(4 * 2 * ohms12(150) * 8000).toBeGreaterThan(120 * 120);
    expect(powerOf(plan).flow.collapsed).toEqual(['load']);
  });
});

const TWO_LEGS = {
  circuits: [
    { amps: 30, sockets: 2, legs: [1, 2] },
    { amps: 20, sockets: 2, legs: [1] },
  ],
};

describe('a feeder of two opposite legs', () => {
  const fed = (one: number, two: number) =>
    powerOf(
      wired([
        generator('genny', TWO_LEGS),
        box('box'),
        drawing('a', one),
        drawing('b', two),
        cable('feeder', 'genny', 'box', 30),
        cable('cord-a', 'box', 'a', 5, { circuit: 1 }),
        cable('cord-b', 'box', 'b', 5, { circuit: 2 }),
      ]),
    );

  test('in balance nothing flows in its neutral, and each leg loses half of what one alone would', () => {
    const { flow } = fed(1200, 1200);
    const feeder = flow.cords.get('feeder');
    expect(feeder?.neutralAmps).toBeCloseTo(0, 9);
    const [amps = 0] = feeder?.legAmps ?? [];
    expect(feeder?.dropVolts).toBeCloseTo(ohms12(30) * amps, 9);
    expect(flow.loads.get('a')?.volts).toBeCloseTo(flow.loads.get('b')?.volts ?? 0, 9);
    expect(flow.sources.get('genny')?.legAmps[0]).toBeCloseTo(flow.sources.get('genny')?.legAmps[1] ?? 0, 9);
  });

  test('with one leg alone all of it comes back in the neutral', () => {
    const { flow } = fed(1200, 0);
    const feeder = flow.cords.get('feeder');
    expect(feeder?.neutralAmps).toBeCloseTo(feeder?.legAmps[0] ?? 0, 9);
    expect(feeder?.dropVolts).toBeCloseTo(2 * ohms12(30) * (feeder?.legAmps[0] ?? 0), 9);
    expect(flow.loads.get('b')?.volts).toBeGreaterThan(120);
  });

  test('a box on one leg puts all of its circuits on that one', () => {
    const power = powerOf(
      wired([
        generator('genny'),
        box('box'),
        drawing('a', 600),
        drawing('b', 600),
        cable('feeder', 'genny', 'box', 30),
        cable('cord-a', 'box', 'a', 5, { circuit: 1 }),
        cable('cord-b', 'box', 'b', 5, { circuit: 2 }),
      ]),
    );
    expect(power.network.feeds.map(({ legs }) => legs)).toEqual([[1], [1], [1]]);
    const feeder = power.flow.cords.get('feeder');
    expect(feeder?.amps).toBeCloseTo(
      (power.flow.loads.get('a')?.amps ?? 0) + (power.flow.loads.get('b')?.amps ?? 0),
      9,
    );
  });
});

test('three legs in balance need no neutral, and lose the square root of three of a line from line to line', () => {
  const three = [1, 2, 3].map((leg) => ({ amps: 20, sockets: 1, legs: [leg] }));
  const { flow } = powerOf(
    wired([
      generator('genny', { circuits: [{ amps: 32, sockets: 1, legs: [1, 2, 3] }] }),
      box('box', { circuits: three }),
      ...['a', 'b', 'c'].map((id) => drawing(id, 1000)),
      cable('feeder', 'genny', 'box', 40),
      ...['a', 'b', 'c'].map((id, k) => cable(`cord-${id}`, 'box', id, 1, { circuit: k + 1 })),
    ]),
  );
  const feeder = flow.cords.get('feeder');
  expect(feeder?.neutralAmps).toBeCloseTo(0, 6);
  expect(feeder?.dropVolts).toBeCloseTo(ohms12(40) * (feeder?.legAmps[0] ?? 0), 9);
});
