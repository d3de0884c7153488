import type { Plan } from '../plan/schema/plan';
import { minutesOf } from '../sky/instant';
import { nightTimes } from '../sky/night';

/** Where the sun does not get far enough down or up to say, a night of work, hours. Source: common practice, no source */
const USUAL_HOURS = 10;

/** How long everything is on, and what that follows from. */
export interface NightHours {
  readonly hours: number;
  readonly from: 'said' | 'call to wrap' | 'dusk to dawn' | 'usual';
}

/**
 * How long everything is on: as asked, else as the plan says, else from call to wrap where its night has both, else from
 * the end of civil dusk to the start of civil dawn.
 */
export function nightHours(plan: Plan, asked: number | null = null): NightHours {
  const said = asked ?? plan.power?.hours;
  if (said !== undefined && said !== null) return { hours: said, from: 'said' };
  const { call, wrapBy } = plan.night ?? {};
  if (call !== undefined && wrapBy !== undefined && call !== wrapBy)
    return { hours: ((minutesOf(wrapBy) - minutesOf(call) + 1440) % 1440) / 60, from: 'call to wrap' };
  // Any clock will do: only the time between the two counts. The one of the place's longitude has its noons in place.
  const clock = Math.round(plan.place.longitudeDegrees / 15);
  const { civilDusk, civilDawn } = nightTimes(plan.place, plan.place.date, clock);
  if (civilDusk === null || civilDawn === null || civilDawn <= civilDusk)
    return { hours: USUAL_HOURS, from: 'usual' };
  return { hours: (civilDawn - civilDusk) / 60, from: 'dusk to dawn' };
}
