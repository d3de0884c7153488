import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { GENERATOR_CLASSES } from '../../../src/core/kit/powerClasses';
import { burnAt } from '../../../src/core/power/fuel';
import { powerReport } from '../../../src/core/report/power/powerReport';
import { cable, drawing, generator, wired } from '../../plans/wired';
import { cases } from '../../thorough';

/** Four numbers of a plate: more at more load, as every engine's are. */
const plate = fc
  .tuple(
    fc.double({ min: 0.1, max: 3, noNaN: true }),
    fc.array(fc.double({ min: 0.05, max: 3, noNaN: true }), { minLength: 3, maxLength: 3 }),
  )
  .map(([first, [a, b, c]]): [number, number, number, number] => [
    first,
    first + a,
    first + a + b,
    first + a + b + c,
  ]);
const load = fc.double({ min: 0, max: 1.2, noNaN: true });

describe('what a generator burns', () => {
  test.prop([plate, load, load], { numRuns: cases(300) })(
    'is never less at more load, and never nothing while it runs',
    (burn, one, other) => {
      const [less, more] = [Math.min(one, other), Math.max(one, other)];
      expect(burnAt(burn, more)).toBeGreaterThanOrEqual(burnAt(burn, less) - 1e-12);
      expect(burnAt(burn, less)).toBeGreaterThanOrEqual(burn[0] / 2);
    },
  );

  test.prop([plate, load], { numRuns: cases(300) })(
    'stays between the two numbers that are beside it',
    (burn, share) => {
      const quarter = Math.floor(share * 4);
      const [low, high] = [burn[quarter - 1] ?? 0, burn[quarter] ?? Number.POSITIVE_INFINITY];
      expect(burnAt(burn, share)).toBeGreaterThanOrEqual(low - 1e-12);
      expect(burnAt(burn, share)).toBeLessThanOrEqual(high + 1e-12);
    },
  );

  it('of each class gives more of a litre the more it is loaded, and never more than an engine can', () => {
    for (const { word, power } of GENERATOR_CLASSES)
      for (const { continuousWatts, litresPerHour, fuel } of [power[120], power[230]]) {
        const given = [0.1, 0.25, 0.5, 0.75, 1].map(
          (share) => (continuousWatts * share) / burnAt(litresPerHour, share) / 1000,
        );
        expect(
          [...given].sort((a, b) => a - b),
          word,
        ).toEqual(given);
        // A litre of petrol holds some 9 kWh of heat, of diesel 10: a tenth of it at least comes out at full, under a half at most.
        const heat = fuel === 'diesel' ? 10 : 9;
        expect(given[4] / heat, word).toBeGreaterThan(0.1);
        expect(given[4] / heat, word).toBeLessThan(0.45);
      }
  });

  test.prop([fc.integer({ min: 100, max: 2900 }), fc.integer({ min: 1, max: 14 })], { numRuns: cases(30) })(
    'through a night is what it burns at that load by its hours, and more for every watt and hour',
    (watts, hours) => {
      const litres = (drawn: number, through: number): number =>
        powerReport(
          wired([generator('Genny'), drawing('Lamp', drawn), cable('Cord', 'Genny', 'Lamp', 0.001)]),
          through,
        ).totals.litres;
      const plateOf: [number, number, number, number] = [1.1, 1.65, 2.25, 2.95];
      expect(litres(watts, hours)).toBeCloseTo(burnAt(plateOf, watts / 5500) * hours, 3);
      expect(litres(watts + 100, hours)).toBeGreaterThan(litres(watts, hours));
      expect(litres(watts, hours + 1)).toBeGreaterThan(litres(watts, hours));
    },
  );
});
