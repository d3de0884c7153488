import { exp } from '../../units/steadyMath';

/** h c ÷ k, nm K. Source: [planck] */
const C2 = 1.438777e7;

/** Radiance of a full radiator at a wavelength, nm, and a temperature, K, in a unit of its own. Source: [planck] */
export const radiance = (nanometres: number, kelvin: number): number => {
  const micrometres = nanometres / 1000;
  const power = micrometres * micrometres * micrometres * micrometres * micrometres;
  return 1 / (power * (exp(C2 / (nanometres * kelvin)) - 1));
};

/** What the light-adapted eye makes of each wavelength from 380 nm on, every 10 nm. Source: [photopic-curve] */
const SEEN = [
  0.000039, 0.00012, 0.000396, 0.00121, 0.004, 0.0116, 0.023, 0.038, 0.06, 0.09098, 0.13902, 0.20802, 0.323,
  0.503, 0.71, 0.862, 0.954, 0.99495, 0.995, 0.952, 0.87, 0.757, 0.631, 0.503, 0.381, 0.265, 0.175, 0.107,
  0.061, 0.032, 0.017, 0.00821, 0.004102, 0.002091, 0.001047, 0.00052, 0.000249, 0.00012, 0.00006, 0.00003,
  0.000015,
];
const FIRST_NANOMETRES = 380;
const STEP_NANOMETRES = 10;

/** What is seen of a spectrum: its sum over the curve of the eye, per nm. Source: [photopic-curve] */
export const seenOf = (spectrum: (nanometres: number) => number): number =>
  SEEN.reduce((sum, seen, k) => sum + seen * spectrum(FIRST_NANOMETRES + k * STEP_NANOMETRES), 0) *
  STEP_NANOMETRES;
