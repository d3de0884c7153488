import { asin, atan2, cos, sin, tan } from '../units/steadyMath';
import { equinoxAlong, type Place, sunAt } from './bodies';
import type { Instant } from './instant';

/** Where on the earth somebody stands, degrees; east and north are positive. */
export interface Spot {
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
}

/** Where a body is seen in the sky, degrees: the azimuth clockwise from true north. */
export interface InSky {
  readonly altitude: number;
  readonly azimuth: number;
}

/** Where the middle of sun and moon stands, degrees, when the upper limb meets a level horizon, with what the air lifts. Source: [meeus] */
export const RISING_DEGREES = -0.833;

const RADIANS = Math.PI / 180;
/** Radius of the earth at the equator. Source: [meeus] */
const EARTH_KILOMETRES = 6378.14;

/**
 * Where a body is seen from a place, its middle, without what the air bends; the moon from the ground, not from the
 * middle of the earth.
 *
 * Source: [meeus]
 */
export function seenFrom(
  { rightAscension, declination, kilometres }: Place,
  instant: Instant,
  spot: Spot,
): InSky {
  const sidereal = 280.46061837 + 360.98564736629 * instant + equinoxAlong(instant) + spot.longitudeDegrees;
  const hour = ((sidereal - rightAscension) % 360) * RADIANS;
  const latitude = spot.latitudeDegrees * RADIANS;
  const height = declination * RADIANS;
  const altitude = asin(sin(latitude) * sin(height) + cos(latitude) * cos(height) * cos(hour));
  const south = atan2(sin(hour), cos(hour) * sin(latitude) - tan(height) * cos(latitude));
  const parallax = asin((EARTH_KILOMETRES / kilometres) * cos(altitude));
  return {
    altitude: (altitude - parallax) / RADIANS,
    azimuth: (((south / RADIANS + 180) % 360) + 360) % 360,
  };
}

/** The sun from a place. */
export const sunFrom = (spot: Spot, instant: Instant): InSky => seenFrom(sunAt(instant), instant, spot);

/**
 * How far the air lifts what stands at a true altitude, degrees, at sea level.
 *
 * Source: [meeus]
 */
export function lifted(altitude: number): number {
  if (altitude < -1) return 0;
  return 1.02 / tan((altitude + 10.3 / (altitude + 5.11)) * RADIANS) / 60;
}
