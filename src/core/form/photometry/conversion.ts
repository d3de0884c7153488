import { radiance, seenOf } from './fullRadiator';

/** Between these a lamp behind a gel stays: 25 to 1,000 mired; limits of our own. */
const BLUEST_KELVIN = 40000;
const REDDEST_KELVIN = 1000;

/** Largest transmission: two faces that turn back 4 % each. Source: common practice, no source */
const CLEAREST = 0.92;
/** Between these wavelengths the gel holds, nm: what makes a camera's colours. Source: common practice, no source */
const HOLDS_FROM = 410;
const HOLDS_TO = 660;

/** The colour temperature behind a gel, kelvin: its mired are added to the lamp's, 1,000,000 ÷ K. At most 40,000 K, at least 1,000 K. */
export function convertedKelvin(kelvin: number, mired: number): number {
  if (mired === 0) return kelvin;
  const reciprocal = 1e6 / kelvin + mired;
  return 1e6 / Math.min(1e6 / REDDEST_KELVIN, Math.max(1e6 / BLUEST_KELVIN, reciprocal));
}

/**
 * The share of a lamp's light that a conversion gel lets through, as the eye weighs it; 1 for no gel. The gel is an
 * ideal one, which makes of a full radiator of the lamp's temperature exactly one of the other: its transmission goes
 * as the ratio of the two, largest at an end of what it holds for, and no larger beyond.
 *
 * Source: [planck], [photopic-curve]; checked against [conversion-filters] within a third of a stop
 */
export function conversionShare(kelvin: number, mired: number): number {
  const to = convertedKelvin(kelvin, mired);
  if (to === kelvin) return 1;
  const ratio = (nanometres: number): number => radiance(nanometres, to) / radiance(nanometres, kelvin);
  const largest = Math.max(ratio(HOLDS_FROM), ratio(HOLDS_TO));
  const passed = (nanometres: number): number => CLEAREST * Math.min(1, ratio(nanometres) / largest);
  return (
    seenOf((nanometres) => passed(nanometres) * radiance(nanometres, kelvin)) /
    seenOf((nanometres) => radiance(nanometres, kelvin))
  );
}
