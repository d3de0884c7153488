import { LUX_PER_FOOTCANDLE } from '../units/illuminance';
import { acos, cos, pow, sin } from '../units/steadyMath';
import { sunAt } from './bodies';
import { type InSky, lifted, type Spot } from './horizon';
import type { Instant } from './instant';
import { moonAt, moonFrom } from './moon';

/** The moon over a place. */
export interface Moon {
  /** Where it is seen, lifted by the air. */
  readonly seen: InSky;
  /** The share of its disc that is lit. */
  readonly lit: number;
  /** Waxing before full, waning after. */
  readonly isWaxing: boolean;
  /** 0 for full, 180 for new. */
  readonly phaseDegrees: number;
  /** On a surface that faces it, under a clear sky; 0 while it is down. */
  readonly lux: number;
}

const RADIANS = Math.PI / 180;
/** What a clear sky takes of what comes straight down, magnitudes. Source: [moonlight-model] */
const EXTINCTION = 0.172;
/** The moon's mean distance, at which the model's is taken to stand; from memory. */
const MEAN_KILOMETRES = 384400;

/** How many times as much air as straight up lies along an altitude. Source: [moonlight-model] */
export function airMass(altitudeDegrees: number): number {
  const cosine = cos(altitudeDegrees * RADIANS);
  return 1 / Math.sqrt(1 - 0.96 * cosine * cosine);
}

/** What clear air leaves of light that passes so many masses of it. Source: [moonlight-model] */
export const throughAir = (masses: number): number => pow(10, -0.4 * EXTINCTION * masses);

/** Light of the moon above the air at its mean distance, footcandles, by its phase angle. Source: [moonlight-model] */
export function moonFootcandles(phaseDegrees: number): number {
  const square = phaseDegrees * phaseDegrees;
  return pow(10, -0.4 * (3.84 + 0.026 * phaseDegrees + 4e-9 * square * square));
}

/** Degrees between sun and moon as seen from the middle of the earth, and whether the moon follows the sun, as before full. */
function apart(instant: Instant): { readonly elongation: number; readonly isWaxing: boolean } {
  const [sun, moon] = [sunAt(instant), moonAt(instant)];
  const [a, b] = [sun.declination * RADIANS, moon.declination * RADIANS];
  const turn = moon.rightAscension - sun.rightAscension;
  const cosine = sin(a) * sin(b) + cos(a) * cos(b) * cos(turn * RADIANS);
  return { elongation: acos(cosine) / RADIANS, isWaxing: ((turn % 360) + 360) % 360 < 180 };
}

/**
 * The moon from a place: where it stands, how much of it is lit, and how many lux it gives under a clear sky, by its
 * phase, its distance and the air in between.
 *
 * Source: [meeus], [moonlight-model]
 */
export function moonOver(spot: Spot, instant: Instant): Moon {
  const { elongation, isWaxing } = apart(instant);
  // The sun is so far away that the two angles make up half a turn to a sixth of a degree.
  const phaseDegrees = 180 - elongation;
  const { altitude, azimuth } = moonFrom(spot, instant);
  const up = altitude + lifted(altitude);
  const nearness = MEAN_KILOMETRES / moonAt(instant).kilometres;
  const lux =
    up > 0
      ? moonFootcandles(phaseDegrees) * LUX_PER_FOOTCANDLE * nearness * nearness * throughAir(airMass(up))
      : 0;
  return {
    seen: { altitude: up, azimuth },
    lit: (1 + cos(phaseDegrees * RADIANS)) / 2,
    isWaxing,
    phaseDegrees,
    lux,
  };
}

/** cd/m² in a nanolambert: 10⁴ ÷ π of them make a lambert. From memory. */
const CANDELA_PER_NANOLAMBERT = 1e-5 / Math.PI;
/** Nearer to the moon than this its glow is taken as it is here, degrees: the model's other curve there is left out. */
const NEAREST_DEGREES = 10;

/**
 * Luminance of a clear sky from the moonlight in it, cd/m², so many degrees from the moon and so many above the
 * horizon, for a moon of `lux`.
 *
 * Source: [moonlight-model]
 */
export function scatteredMoonlight(lux: number, apartDegrees: number, altitudeDegrees: number): number {
  if (lux <= 0) return 0;
  const apartFrom = Math.max(NEAREST_DEGREES, apartDegrees);
  const cosine = cos(apartFrom * RADIANS);
  const scattered = pow(10, 5.36) * (1.06 + cosine * cosine) + pow(10, 6.15 - apartFrom / 40);
  const footcandles = lux / LUX_PER_FOOTCANDLE;
  return scattered * footcandles * (1 - throughAir(airMass(altitudeDegrees))) * CANDELA_PER_NANOLAMBERT;
}
