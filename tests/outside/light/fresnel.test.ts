import { describe, expect, test } from 'vitest';
import { fresnel } from '../../../src/core/light/fresnel';

const cosine = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);
const percent = (share: number): number => share * 100;

describe('what level water turns back', () => {
  // Incidence, per cent of unpolarised light, and how far the table's index of 4/3 and its rounding may be off; then
  // the same by hand for 1.333. Source: [water-reflectance]
  test.each([
    [0, 2.0, 0.1, 2.037],
    [30, 2.1, 0.1, 2.144],
    [45, 2.8, 0.1, 2.79],
    [60, 5.9, 0.1, 5.969],
    [70, 13.3, 0.15, 13.348],
    [80, 34.9, 0.2, 34.792],
  ])('at %d°: %d %%', (degrees, table, tolerance, exact) => {
    const { unpolarised } = fresnel(cosine(degrees));
    expect(Math.abs(percent(unpolarised) - table)).toBeLessThan(tolerance);
    expect(percent(unpolarised)).toBeCloseTo(exact, 2);
  });

  // Across and along at 45° and 60°. Source: [water-reflectance]
  test.each([
    [45, 5.3, 0.3, 5.299, 0.281],
    [60, 11.5, 0.4, 11.507, 0.431],
  ])('at %d° by polarisation: %d and %d %%', (degrees, across, along, exactAcross, exactAlong) => {
    const found = fresnel(cosine(degrees));
    expect(Math.abs(percent(found.across) - across)).toBeLessThan(0.1);
    expect(Math.abs(percent(found.along) - along)).toBeLessThan(0.1);
    expect(percent(found.across)).toBeCloseTo(exactAcross, 2);
    expect(percent(found.along)).toBeCloseTo(exactAlong, 2);
  });

  test('nothing that swings in the plane of incidence at Brewster’s angle, 53.123°', () => {
    expect((Math.atan(1.333) * 180) / Math.PI).toBeCloseTo(53.123, 3);
    expect(fresnel(cosine(53.123)).along).toBeLessThan(1e-9);
    expect(fresnel(cosine(52)).along).toBeGreaterThan(1e-5);
    expect(fresnel(cosine(54.2)).along).toBeGreaterThan(1e-5);
  });

  test('everything at a glance along it, and never more', () => {
    expect(fresnel(0).unpolarised).toBe(1);
    expect(fresnel(-0.1).unpolarised).toBe(1);
    expect(fresnel(2)).toEqual(fresnel(1));
  });
});
