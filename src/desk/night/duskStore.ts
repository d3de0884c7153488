import { createStore } from 'zustand/vanilla';
import { duskSpan } from '../../core/night/dusk/lightThroughDusk';
import { lastLight, type SunOver, sunOver } from '../../core/night/dusk/sunOver';
import { nightClock } from '../../core/night/times/nightClock';
import type { Plan } from '../../core/plan/schema/plan';

/** At which minute of the night the sky is looked at; null until somebody says. */
export const duskStore = createStore<{ readonly minutes: number | null }>()(() => ({ minutes: null }));

/** So long before sunset the sky is first looked at, minutes: shadows are long, and still there. */
const BEFORE_SUNSET = 30;
/** Before sunset so much of the day can be looked at, minutes. */
export const DAY_MINUTES = 90;

/**
 * The sun at the minute at which the sky is looked at, within the dusk and what of the day is shown, and its last light;
 * null where the sun does not set.
 */
export function duskSun(
  plan: Pick<Plan, 'place' | 'sky' | 'night'>,
  minutes: number | null,
): { readonly sun: SunOver; readonly last: SunOver } | null {
  const clock = nightClock(plan);
  const last = lastLight(plan, clock);
  const span = duskSpan(plan, clock);
  if (!last || !span) return null;
  const within = Math.min(
    Math.max(minutes ?? span.from - BEFORE_SUNSET, span.from - DAY_MINUTES),
    span.until,
  );
  return { sun: sunOver(plan, clock, within), last };
}
