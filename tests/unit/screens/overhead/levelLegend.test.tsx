import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import type { LengthSystem } from '../../../../src/core/units/lengths';
import { STOPS } from '../../../../src/screens/overhead/levels/bands';
import { LevelLegend } from '../../../../src/screens/overhead/levels/LevelLegend';
import { smallRoof } from '../../smallRoof';

const plan = smallRoof();
const single = plan.setups.find(({ id }) => id === 'single') ?? plan.setups[0];
const withIso = (iso: number) => ({ ...plan, setups: [{ ...single, iso }] });

/** The rows of the legend: what each cell says, the heading last. */
function rowsOf(lengths: LengthSystem, of = withIso(800), setupId: string | null = single.id) {
  const markup = renderToStaticMarkup(<LevelLegend plan={of} setupId={setupId} lengths={lengths} />);
  return [...markup.matchAll(/<tr>(.*?)<\/tr>/g)].map(([, row]) =>
    [...row.matchAll(/<t[dh][^>]*>(.*?)<\/t[dh]>/g)].map(([, cell]) =>
      cell.replaceAll(/<[^>]*>/g, '').replaceAll('\u00a0', ' '),
    ),
  );
}

/**
 * What T2.8 at ISO 800 asks for with 1/48 s: 250 · 2.8² ÷ (800 ÷ 48), by the usual constant of incident meters, and that
 * by the 10.764 lux of a footcandle.
 */
const ASKED = (250 * 2.8 ** 2) / (800 / 48);

describe('the legend of the level map', () => {
  test.each([
    ['m', 1, 'lux'],
    ['ft-in', 10.764, 'footcandles'],
  ] as const)(
    'by %s gives each step in stops and beneath it in its unit, twice as much a stop',
    (lengths, by, unit) => {
      const [stops, levels] = rowsOf(lengths);
      expect(stops).toEqual(['−4', '−3', '−2', '−1', '0', '+1', '+2', '+3', 'stops from T2.8, ISO 800']);
      expect(levels).toHaveLength(STOPS.length + 1);
      expect(levels.at(-1)).toBe(unit);
      for (const [k, stop] of STOPS.entries()) {
        const asked = (ASKED / by) * 2 ** stop;
        expect(levels[k]).toMatch(/^[\d.,]+$/);
        // Two or three digits are said.
        expect(Math.abs(Number(levels[k].replaceAll(',', '')) / asked - 1), `${stop}`).toBeLessThan(0.05);
      }
    },
  );

  test('goes with the setup that is looked through: half as much light at twice the ISO', () => {
    const zero = STOPS.indexOf(0);
    const [at800, at1600] = [800, 1600].map((iso) => Number(rowsOf('m', withIso(iso))[1][zero]));
    expect(at800 / at1600).toBeCloseTo(2, 1);
    expect(rowsOf('m', withIso(1600))[0].at(-1)).toBe('stops from T2.8, ISO 1600');
    // Without any setup a usual night's exposure is taken.
    expect(rowsOf('m', { ...plan, setups: [] }, null)[0].at(-1)).toBe('stops from T2.8, ISO 800');
  });
});
