import { ambientOf } from '../../light/ambient';
import type { Plan } from '../../plan/schema/plan';
import { sunFrom } from '../../sky/horizon';
import { twilightLux } from '../../sky/twilight';
import { timesOfSky } from '../times/darkness';
import { instantOf, type NightClock, nightClock } from '../times/nightClock';
import { planAt } from './planAt';

/** The light of the sky at a minute of the night. */
export interface DuskLight {
  readonly minutes: number;
  /** Degrees. */
  readonly sunAltitude: number;
  /** Of a clear sky's twilight alone, on level ground. */
  readonly clearTwilightLux: number;
  /** Of all that the plan's sky gives level ground: glow, what is left of twilight, and moonlight that the sky scatters. */
  readonly skyLux: number;
}

/** Where the sun does not get so far down, the table ends so many minutes after it begins. */
const LONGEST_MINUTES = 240;

/**
 * When it gets dark, whole minutes of the night: from sunset to astronomical dusk, or as far as there is either. Null
 * where the sun does not set.
 */
export function duskSpan(
  plan: Pick<Plan, 'place'>,
  clock: NightClock,
): { readonly from: number; readonly until: number } | null {
  const { sunset, astronomicalDusk } = timesOfSky(plan, clock);
  if (sunset === null) return null;
  const from = Math.floor(sunset);
  const until =
    astronomicalDusk !== null && astronomicalDusk > from ? astronomicalDusk : from + LONGEST_MINUTES;
  return { from, until: Math.min(from + LONGEST_MINUTES, Math.ceil(until)) };
}

/** What the sky gives at a whole minute of the night, lux on level ground. */
function duskLightAt(plan: Plan, clock: NightClock, minutes: number): DuskLight {
  const { altitude } = sunFrom(plan.place, instantOf(clock, minutes));
  return {
    minutes,
    sunAltitude: altitude,
    clearTwilightLux: twilightLux(altitude),
    skyLux: ambientOf(planAt(plan, clock, minutes)).above,
  };
}

/** The light through dusk, every so many minutes; empty where the sun does not set. */
export function lightThroughDusk(plan: Plan, everyMinutes = 5): readonly DuskLight[] {
  const clock = nightClock(plan);
  const span = duskSpan(plan, clock);
  if (!span) return [];
  const count = Math.ceil((span.until - span.from) / everyMinutes);
  return Array.from({ length: count + 1 }, (_, k) => duskLightAt(plan, clock, span.from + k * everyMinutes));
}
