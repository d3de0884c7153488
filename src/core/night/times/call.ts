import type { Plan } from '../../plan/schema/plan';
import { timesOfSky } from './darkness';
import { type NightClock, readTime } from './nightClock';

/** How long before sunset a crew is called that nobody has called; by the clock where the sun does not set. Source: common practice, no source */
const BEFORE_SUNSET_MINUTES = 120;
const WITHOUT_SUNSET = 18 * 60;
const QUARTER = 15;

/** When a night's crew is called, minutes of the night, and whether the plan says so. */
export function callOf(
  plan: Pick<Plan, 'place' | 'night'>,
  clock: NightClock,
): { readonly minutes: number; readonly isSaid: boolean } {
  const said = plan.night?.call;
  if (said !== undefined) return { minutes: readTime(clock, said).minutes, isSaid: true };
  const { sunset } = timesOfSky(plan, clock);
  const minutes =
    sunset === null ? WITHOUT_SUNSET : Math.floor((sunset - BEFORE_SUNSET_MINUTES) / QUARTER) * QUARTER;
  return { minutes, isSaid: false };
}
