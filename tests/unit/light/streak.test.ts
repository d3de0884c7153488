import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { fresnel } from '../../../src/core/light/fresnel';
import { lobe } from '../../../src/core/light/microfacet';
import { highlightLuminance, leftAlong, streakOf } from '../../../src/core/light/streak';

const OVER = { eyeMetres: 1.5, lampMetres: 3, apartMetres: 9 };

describe('a streak', () => {
  test('has its middle where a mirror shows the lamp: a third of the way for a lens half as high', () => {
    const { mirrorMetres, elevation } = streakOf(OVER, 0.05, 0);
    expect(mirrorMetres).toBeCloseTo(3, 9);
    expect(Math.tan(elevation)).toBeCloseTo(0.5, 9);
  });

  test('is 1 ÷ sin² of the elevation longer on the floor than wide, of small slopes', () => {
    // As it is seen, foreshortened by the sine: 1 ÷ sin. Source: [glitter-path]
    for (const apartMetres of [4.5, 9, 20]) {
      const { nearMetres, farMetres, widthMetres, elevation } = streakOf({ ...OVER, apartMetres }, 0.004, 0);
      expect(((farMetres - nearMetres) / widthMetres) * Math.sin(elevation) ** 2).toBeCloseTo(1, 2);
    }
  });

  test('ends where a facet leans by 1.177 of the slopes, and reaches towards the camera', () => {
    const { nearMetres, farMetres, mirrorMetres } = streakOf(OVER, 0.05, 0);
    const leanAt = (metres: number) => (Math.atan(1.5 / metres) - Math.atan(3 / (9 - metres))) / 2;
    expect(Math.tan(leanAt(nearMetres))).toBeCloseTo(1.17741 * 0.05, 6);
    expect(Math.tan(leanAt(farMetres))).toBeCloseTo(-1.17741 * 0.05, 6);
    expect(nearMetres).toBeLessThan(mirrorMetres);
    expect(farMetres).toBeGreaterThan(mirrorMetres);
  });

  test('is as long as where the microfacets themselves fall to half, summed along the floor', () => {
    const slope = 0.03;
    const at = (metres: number) => {
      const way = (x: number, y: number): Vec3 => [x / Math.hypot(x, y), y / Math.hypot(x, y), 0];
      const { perLux } = lobe([0, 1, 0], way(9 - metres, 3), way(-metres, 1.5), slope);
      return perLux / ((9 - metres) ** 2 + 9);
    };
    const metres = Array.from({ length: 6000 }, (_, k) => 1 + k / 1000);
    const most = Math.max(...metres.map(at));
    const bright = metres.filter((place) => at(place) > most / 2);
    const { nearMetres, farMetres } = streakOf(OVER, slope, 0);
    expect((bright[bright.length - 1] - bright[0]) / (farMetres - nearMetres)).toBeCloseTo(1, 1);
  });

  test('has half of its luminance left at its ends, all of it in the middle, and none far off', () => {
    for (const radius of [0, 0.2]) {
      const { nearMetres, mirrorMetres, farMetres } = streakOf(OVER, 0.05, radius);
      const left = [nearMetres, mirrorMetres, farMetres, 0.5].map((metres) =>
        leftAlong(OVER, metres, 0.05, radius),
      );
      expect(left[0]).toBeCloseTo(0.5, 1);
      expect(left[1]).toBeCloseTo(1, 9);
      expect(left[2]).toBeCloseTo(0.5, 1);
      expect(left[3]).toBeLessThan(1e-6);
    }
  });

  test('grows with the roughness and with the lamp', () => {
    const lengthOf = (slope: number, radius: number) => {
      const { nearMetres, farMetres } = streakOf(OVER, slope, radius);
      return farMetres - nearMetres;
    };
    expect(lengthOf(0.1, 0)).toBeGreaterThan(1.8 * lengthOf(0.05, 0));
    expect(lengthOf(0.0015, 0.3)).toBeGreaterThan(3 * lengthOf(0.0015, 0));
  });
});

describe('the luminance of a highlight', () => {
  test('in smooth water is the lamp’s own times Fresnel: 10,000 cd of 0.1 m² at 60° are 5,969 cd/m²', () => {
    const reflectance = fresnel(0.5).unpolarised;
    expect(highlightLuminance(reflectance, 10000, 0.1, 0, 5, Math.PI / 6) / 5969).toBeCloseTo(1, 4);
  });

  test('of a small lamp in rough water is what the microfacets give', () => {
    const [slope, metres, elevation] = [0.06, 7, 0.4];
    const way = (turn: 1 | -1): Vec3 => [turn * Math.cos(elevation), Math.sin(elevation), 0];
    const { perLux, facetCosine } = lobe([0, 1, 0], way(1), way(-1), slope);
    const { unpolarised } = fresnel(facetCosine);
    const byFacets = (10000 / (metres * metres)) * perLux * unpolarised;
    expect(highlightLuminance(unpolarised, 10000, 0, slope, metres, elevation) / byFacets).toBeCloseTo(1, 6);
  });

  test('is never more than the lamp’s own', () => {
    for (const slope of [0, 0.001, 0.05, 0.3])
      expect(highlightLuminance(1, 500, 0.02, slope, 4, 0.2)).toBeLessThanOrEqual(500 / 0.02 + 1e-6);
  });
});
