import { directionOf, type Vec3 } from '../../form/build/vector';
import type { Plan } from '../../plan/schema/plan';
import { lifted, sunFrom } from '../../sky/horizon';
import { timesOfSky } from '../times/darkness';
import { instantOf, type NightClock } from '../times/nightClock';

/** The sun over a plan's roof at a minute of the night. */
export interface SunOver {
  readonly minutes: number;
  /** Of its middle over the level horizon, degrees, as it is seen, lifted by the air. */
  readonly altitude: number;
  /** Clockwise from true north, degrees. */
  readonly azimuth: number;
  /** Unit vector from the roof towards it, along the plan's axes. */
  readonly way: Vec3;
}

/** Where the sun stands over a plan's roof at a minute of the night. */
export function sunOver({ place }: Pick<Plan, 'place'>, clock: NightClock, minutes: number): SunOver {
  const { altitude, azimuth } = sunFrom(place, instantOf(clock, minutes));
  const seen = altitude + lifted(altitude);
  return { minutes, altitude: seen, azimuth, way: directionOf(place.northDegrees + azimuth, seen) };
}

/** Where the sun's last light comes from: where it stands as its upper edge goes. Null where it does not set. */
export function lastLight(plan: Pick<Plan, 'place'>, clock: NightClock): SunOver | null {
  const { sunset } = timesOfSky(plan, clock);
  return sunset === null ? null : sunOver(plan, clock, sunset);
}
