import type { Plan } from '../plan/schema/plan';
import { scheduleOf } from './order/schedule';
import { workOf } from './order/work';
import { dropFor } from './suggest/drop';
import { callOf } from './times/call';
import { darknessOf, timesOfSky } from './times/darkness';
import { nightClock, readTime } from './times/nightClock';
import type { Night } from './types';
import { nightNotes } from './words/nightNotes';

/**
 * A plan's night: when each setup is rigged, lit, rehearsed and shot, when the meal is, when everyone wraps, against dusk
 * and dawn, and in sentences what does not hold. Pure.
 * @param order places of the plan's setups, in place of the plan's own order, as a suggestion has them
 */
export function nightOf(plan: Plan, order?: readonly number[]): Night {
  const clock = nightClock(plan);
  const work = workOf(plan, clock);
  const schedule = scheduleOf(work, order ?? work.order);
  const said = plan.night?.wrapBy;
  const wrapBy = said === undefined ? null : readTime(clock, said).minutes;
  const night = {
    clock,
    call: callOf(plan, clock).minutes,
    sky: timesOfSky(plan, clock),
    darkness: darknessOf(plan, clock),
    work,
    schedule,
    wrapBy,
    drop: wrapBy === null ? null : dropFor(work, wrapBy, schedule.order),
  };
  return { ...night, notes: nightNotes(plan, night) };
}
