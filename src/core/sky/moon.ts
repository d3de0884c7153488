import { centuries, cosine, onEquator, type Place, sine, turned } from './bodies';
import { type InSky, type Spot, seenFrom } from './horizon';
import type { Instant } from './instant';
import { MOON_ACROSS, MOON_ALONG, MOON_AWAY, type Term } from './moonTerms';

interface Anomalies {
  readonly elongation: number;
  readonly sun: number;
  readonly moon: number;
  readonly node: number;
  /** What terms with the sun's anomaly are weakened by. */
  readonly round: number;
}

function summed(terms: readonly Term[], a: Anomalies, wave: (degrees: number) => number): number {
  let sum = 0;
  for (const [size, d, m, moon, f] of terms) {
    const weakened = m === 0 ? size : size * (Math.abs(m) === 1 ? a.round : a.round * a.round);
    sum += weakened * wave(turned(d * a.elongation + m * a.sun + moon * a.moon + f * a.node));
  }
  return sum;
}

/**
 * The moon as it is seen from the middle of the earth, by the larger terms of its theory, to a few hundredths of a
 * degree.
 *
 * Source: [meeus]
 */
export function moonAt(instant: Instant): Place {
  const t = centuries(instant);
  const anomalies: Anomalies = {
    elongation: turned(297.8501921 + 445267.1114034 * t - 0.0018819 * t * t),
    sun: turned(357.5291092 + 35999.0502909 * t),
    moon: turned(134.9633964 + 477198.8675055 * t + 0.0087414 * t * t),
    node: turned(93.272095 + 483202.0175233 * t - 0.0036539 * t * t),
    round: 1 - 0.002516 * t,
  };
  const mean = 218.3164477 + 481267.88123421 * t - 0.0015786 * t * t;
  const longitude = mean + summed(MOON_ALONG, anomalies, sine) / 1e6;
  const latitude = summed(MOON_ACROSS, anomalies, sine) / 1e6;
  const kilometres = 385000.56 + summed(MOON_AWAY, anomalies, cosine) / 1000;
  return onEquator(t, longitude, latitude, kilometres);
}

/** The moon from a place. */
export const moonFrom = (spot: Spot, instant: Instant): InSky => seenFrom(moonAt(instant), instant, spot);
