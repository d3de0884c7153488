import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { fresnel } from '../../../src/core/light/fresnel';
import { facetDensity, lobe } from '../../../src/core/light/microfacet';

const UP: Vec3 = [0, 1, 0];
const way = (elevation: number, turn: number): Vec3 => [
  Math.cos(elevation) * Math.cos(turn),
  Math.sin(elevation),
  Math.cos(elevation) * Math.sin(turn),
];

test('facets’ areas from straight above come to one', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 0.6, noNaN: true }), (slope) => {
      let sum = 0;
      const steps = 20000;
      for (let k = 0; k < steps; k += 1) {
        const tilt = ((k + 0.5) / steps) * (Math.PI / 2);
        sum += facetDensity(Math.cos(tilt), slope) * Math.cos(tilt) * 2 * Math.PI * Math.sin(tilt);
      }
      expect((sum * (Math.PI / 2)) / steps).toBeCloseTo(1, 3);
    }),
    { numRuns: 20 },
  );
});

/** What comes off all round of one lux on the surface, were the facets perfect mirrors or water. */
function flux(elevation: number, slope: number, isWater: boolean): number {
  const light = way(elevation, 0);
  const [rises, turns] = [160, 320];
  let sum = 0;
  for (let i = 0; i < rises; i += 1) {
    // Even steps of sin², so that each has the same projected solid angle: π ÷ count.
    const sine = Math.sqrt((i + 0.5) / rises);
    for (let j = 0; j < turns; j += 1) {
      const { perLux, facetCosine } = lobe(
        UP,
        light,
        way(Math.asin(sine), ((j + 0.5) / turns) * 2 * Math.PI),
        slope,
      );
      sum += (perLux * (isWater ? fresnel(facetCosine).unpolarised : 1) * Math.PI) / (rises * turns);
    }
  }
  return sum / Math.sin(elevation);
}

test('no more light comes off than falls on, whatever the slope and the way; of mirrors nearly all of it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.15, max: 0.5, noNaN: true }),
      fc.double({ min: 0.15, max: Math.PI / 2, noNaN: true }),
      (slope, elevation) => {
        expect(flux(elevation, slope, false)).toBeLessThan(1.03);
        expect(flux(elevation, slope, true)).toBeLessThan(0.6);
      },
    ),
    { numRuns: 12 },
  );
  expect(flux(Math.PI / 2, 0.15, false)).toBeGreaterThan(0.97);
});

test('of smooth water as much as Fresnel says', () => {
  for (const elevation of [0.5, 0.9, Math.PI / 2])
    expect(flux(elevation, 0.08, true) / fresnel(Math.sin(elevation)).unpolarised).toBeCloseTo(1, 0.8);
});

test('a lamp and an eye may change places', () => {
  const rise = fc.double({ min: 0.05, max: 1.5, noNaN: true });
  const turn = fc.double({ min: 0, max: 6.28, noNaN: true });
  fc.assert(
    fc.property(rise, turn, rise, turn, (a, s, b, t) => {
      const [one, other] = [way(a, s), way(b, t)];
      // The share per lux on the surface is what is the same both ways: luminance for lux that faces the light has a cosine in it.
      const there = lobe(UP, one, other, 0.2).perLux * Math.sin(b);
      const back = lobe(UP, other, one, 0.2).perLux * Math.sin(a);
      expect(there).toBeCloseTo(back, 8);
    }),
    { numRuns: 100 },
  );
});
