import { asin, atan2, cos, sin } from '../units/steadyMath';
import type { Instant } from './instant';

/** Where a body of the sky is, seen from the middle of the earth. Angles in degrees. */
export interface Place {
  readonly rightAscension: number;
  readonly declination: number;
  readonly kilometres: number;
}

const RADIANS = Math.PI / 180;
/** Sine and cosine of degrees. */
export const sine = (degrees: number): number => sin(degrees * RADIANS);
export const cosine = (degrees: number): number => cos(degrees * RADIANS);
/** Degrees in 0 ≤ d < 360. */
export const turned = (degrees: number): number => ((degrees % 360) + 360) % 360;

/** Even time runs ahead of the earth's, seconds: what it is in these decades, to a few; from memory. */
const EVEN_AHEAD_SECONDS = 69;
const DAYS_PER_CENTURY = 36525;
/** Kilometres of an astronomical unit; from memory. */
const UNIT_KILOMETRES = 149597870.7;

/** Centuries of even time since the epoch. */
export const centuries = (instant: Instant): number =>
  (instant + EVEN_AHEAD_SECONDS / 86400) / DAYS_PER_CENTURY;

/** What the nodding of the earth's axis does to longitudes and to its slant, degrees, by its largest terms. */
function nodding(t: number): { readonly along: number; readonly slant: number } {
  const node = 125.04452 - 1934.136261 * t;
  const sun = 2 * (280.4665 + 36000.7698 * t);
  const moon = 2 * (218.3165 + 481267.8813 * t);
  return {
    along: (-17.2 * sine(node) - 1.32 * sine(sun) - 0.23 * sine(moon) + 0.21 * sine(2 * node)) / 3600,
    slant: (9.2 * cosine(node) + 0.57 * cosine(sun) + 0.1 * cosine(moon) - 0.09 * cosine(2 * node)) / 3600,
  };
}

/**
 * How far the nodding axis carries the equinox along the equator, degrees: what the earth's turning has to be counted
 * with, since places in the sky are counted from there.
 *
 * Source: [meeus]
 */
export function equinoxAlong(instant: Instant): number {
  const t = centuries(instant);
  return nodding(t).along * cosine(23.4392911 - 0.0130042 * t);
}

/** From the ecliptic to the equator; angles in degrees, `t` in centuries of even time. */
export function onEquator(t: number, longitude: number, latitude: number, kilometres: number): Place {
  const { along, slant } = nodding(t);
  const tilt = 23.4392911 - 0.0130042 * t + slant;
  const l = turned(longitude + along);
  const y = sine(l) * cosine(tilt) * cosine(latitude) - sine(latitude) * sine(tilt);
  const z = sine(latitude) * cosine(tilt) + cosine(latitude) * sine(tilt) * sine(l);
  return {
    rightAscension: turned(atan2(y, cosine(l) * cosine(latitude)) / RADIANS),
    declination: asin(z) / RADIANS,
    kilometres,
  };
}

/**
 * How far Venus, Jupiter and the moon pull the earth, and with it the sun, along the ecliptic, degrees. Its time is
 * counted from 1900, a century before ours.
 *
 * Source: [meeus], in the form of the earlier formulae for calculators
 */
function pulledAlong(t: number): number {
  const since = t + 1;
  return (
    0.00134 * cosine(153.23 + 22518.7541 * since) +
    0.00154 * cosine(216.57 + 45037.5082 * since) +
    0.002 * cosine(312.69 + 32964.3577 * since) +
    0.00179 * sine(350.74 + 445267.1142 * since) +
    0.00178 * sine(231.19 + 20.2 * since)
  );
}

/**
 * The sun as it is seen from the middle of the earth, to a few thousandths of a degree.
 *
 * Source: [meeus]
 */
export function sunAt(instant: Instant): Place {
  const t = centuries(instant);
  const anomaly = turned(357.52911 + 35999.05029 * t);
  const middle =
    (1.914602 - 0.004817 * t) * sine(anomaly) +
    (0.019993 - 0.000101 * t) * sine(2 * anomaly) +
    0.000289 * sine(3 * anomaly);
  const round = 0.016708634 - 0.000042037 * t;
  const units = (1.000001018 * (1 - round * round)) / (1 + round * cosine(anomaly + middle));
  // Light takes a while: it is seen where it was.
  const longitude = 280.46646 + 36000.76983 * t + middle + pulledAlong(t) - 0.005692 / units;
  return onEquator(t, longitude, 0, units * UNIT_KILOMETRES);
}
