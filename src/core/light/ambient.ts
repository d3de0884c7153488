import { directionOf, dot, type Vec3 } from '../form/build/vector';
import type { Plan } from '../plan/schema/plan';
import { type InSky, sunFrom } from '../sky/horizon';
import { instantInNight } from '../sky/instant';
import { moonOver, scatteredMoonlight } from '../sky/moonlight';
import { twilightLux } from '../sky/twilight';
import { type Colour, luminanceOf, NIGHTS, type Night, plus, times } from './glows';

/** The moon as a lamp that is infinitely far away. */
export interface Moonlight {
  /** Unit vector towards it. */
  readonly way: Vec3;
  /** On a surface that faces it, with nothing in between. */
  readonly lux: number;
  /** Unit vector towards the sun, which says which side of it is lit, and the share of its disc that is. */
  readonly sun: Vec3;
  readonly lit: number;
}

/** What sky, streets and moon give to a night's action. */
export interface Ambient {
  readonly night: Night;
  readonly moon: Moonlight | null;
  /** Luminances, cd/m², and illuminances, lux, of `night`. */
  readonly zenith: number;
  readonly horizon: number;
  readonly ground: number;
  readonly above: number;
  readonly below: number;
}

/** Colour temperature of moonlight, as the sun's light comes back off it; common practice, no source. */
export const MOON_KELVIN = 4100;
/** A clear twilight, blue, of luminance 1; by eye, no source. */
const DUSK_BLUE: Colour = [0.72, 0.99, 1.92];
/** What cloud leaves of the twilight, as a share; from memory. */
const CLOUD_LEAVES = 1 / 3;
/** How high up the sky near the horizon is taken, and how far from the moon on the average, degrees; an estimate, no source. */
const NEAR_HORIZON = { altitude: 15, apart: 75 } as const;

function ambient(night: Night, moon: Moonlight | null): Ambient {
  return {
    night,
    moon,
    zenith: luminanceOf(night.zenith),
    horizon: luminanceOf(night.horizon),
    ground: luminanceOf(night.ground),
    above: luminanceOf(night.above),
    below: luminanceOf(night.below),
  };
}

/** What the night is where a plan says nothing of its sky: cloud over a large town, and no moon. */
export const USUAL_AMBIENT: Ambient = ambient(NIGHTS['cloud over a large town'], null);

/** The night with more light in its sky: luminances overhead and near the horizon, cd/m², and lux on level ground. */
const lighter = (night: Night, zenith: Colour, horizon: Colour, lux: Colour): Night => ({
  ...night,
  zenith: plus(night.zenith, zenith),
  horizon: plus(night.horizon, horizon),
  above: plus(night.above, lux),
});

/** A sky with twilight in it, as if it were as bright all over. */
function withTwilight(night: Night, lux: number): Night {
  if (lux <= 0) return night;
  const even = times(DUSK_BLUE, lux / Math.PI);
  return lighter(night, even, even, times(DUSK_BLUE, lux));
}

/** A clear sky with the moonlight that it scatters; what that gives level ground by the mean of the two luminances, an estimate. */
function withMoonInIt(night: Night, lux: number, altitude: number): Night {
  const overhead = scatteredMoonlight(lux, 90 - altitude, 90);
  const low = scatteredMoonlight(lux, NEAR_HORIZON.apart, NEAR_HORIZON.altitude);
  const grey = (luminance: number): Colour => [luminance, luminance, luminance];
  return lighter(night, grey(overhead), grey(low), grey((Math.PI * (overhead + low)) / 2));
}

const kept = new WeakMap<Plan['place'], { readonly sky: Plan['sky']; readonly found: Ambient }>();

/**
 * What the sky of a plan gives: the glow that it names, at its clock time the twilight that is left, and the moon where
 * it is out, by its phase, its height and the air, from the way where it stands over the roof. Where the moon shines
 * through a clear sky it lights that too. Without a sky of its own, and without a clock time, no sun and no moon.
 */
export function ambientOf(plan: Pick<Plan, 'place' | 'sky'>): Ambient {
  const { place, sky } = plan;
  if (!sky) return USUAL_AMBIENT;
  const known = kept.get(place);
  if (known && known.sky === sky) return known.found;
  const found = skyOver(place, sky);
  kept.set(place, { sky, found });
  return found;
}

function skyOver(place: Plan['place'], sky: NonNullable<Plan['sky']>): Ambient {
  const { glow, clock, moon } = sky;
  const isCloudy = glow === 'cloud over a large town';
  const night = NIGHTS[glow];
  if (!clock) return ambient(night, null);
  const instant = instantInNight(place.date, clock.time, clock.utcOffsetHours);
  const sun = sunFrom(place, instant);
  const dusk = twilightLux(sun.altitude) * (isCloudy ? CLOUD_LEAVES : 1);
  const dusky = withTwilight(night, dusk);
  const { seen, lux, lit } = moonOver(place, instant);
  if (!moon || lux <= 0) return ambient(dusky, null);
  const onRoof = ({ azimuth, altitude }: InSky): Vec3 => directionOf(place.northDegrees + azimuth, altitude);
  const light: Moonlight = { way: onRoof(seen), lux, sun: onRoof(sun), lit };
  return ambient(isCloudy ? dusky : withMoonInIt(dusky, lux, seen.altitude), light);
}

/**
 * Lux of the glow of sky and streets on a surface, by its unit normal: that from above on what faces up, that from
 * below on what faces down, in between by the share of each that it sees. Nothing stands in its way: it comes from all
 * round. The moon is not in it: see `moonRay`.
 */
export const ambientLux = ({ above, below }: Ambient, normal: Vec3): number =>
  below + (above - below) * (0.5 + 0.5 * normal[1]);

/** Lux of a ray on a surface by its unit normal. */
export const rayLux = (ray: Vec3 | null, normal: Vec3): number => (ray ? Math.max(0, dot(ray, normal)) : 0);
