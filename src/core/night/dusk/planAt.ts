import type { Plan } from '../../plan/schema/plan';
import { type NightClock, wallTime } from '../times/nightClock';

/** The plan under its sky as it is at a whole minute of the night. A plan without a sky has the usual one: see `ambientOf`. */
export function planAt(plan: Plan, clock: NightClock, minutes: number): Plan {
  const time = wallTime({ ...clock, change: null }, minutes);
  return {
    ...plan,
    sky: {
      glow: 'cloud over a large town',
      ...plan.sky,
      clock: { time, utcOffsetHours: clock.utcOffsetHours },
    },
  };
}
