import { setupsInOrder } from '../../plan/nightOrder';
import type { Plan } from '../../plan/schema/plan';
import { callOf } from '../times/call';
import { type NightClock, nightClock } from '../times/nightClock';
import { costOf, needsOf, takesOf, USUAL_NIGHT } from '../times/takes';
import { type Beginnings, beginningsOf, dryMinutesFrom } from './changes';
import { type Demand, demandsOf } from './demands';

/** What one setup takes, minutes, and how its ground has to be. */
export interface Job {
  readonly setupId: string;
  readonly rig: number;
  readonly light: number;
  readonly rehearse: number;
  readonly shoot: number;
  readonly move: number;
  readonly ground: 'wet' | 'dry' | null;
}

/** A night as numbers: all that times and orders are worked out from. Minutes; jobs by their place in the plan's order. */
export interface Work {
  readonly clock: NightClock;
  readonly call: number;
  readonly jobs: readonly Job[];
  /** What it takes from one job to another, with its move and all changes but a wet-down. */
  readonly legs: readonly (readonly number[])[];
  /** How the jobs begin: what changes from one to another. */
  readonly beginnings: Beginnings;
  readonly demands: readonly Demand[];
  /** The meal begins by then; a meal of no minutes is none. */
  readonly mealBy: number;
  readonly mealMinutes: number;
  readonly wetDownMinutes: number;
  readonly driesMinutes: number;
  readonly strikeMinutes: number;
  /** The jobs as the night has them. */
  readonly order: readonly number[];
}

/** The numbers of a plan's night. */
export function workOf(plan: Plan, clock: NightClock = nightClock(plan)): Work {
  const { night } = plan;
  const call = callOf(plan, clock).minutes;
  const beginnings = beginningsOf(plan);
  const jobs = plan.setups.map(
    ({ id }): Job => ({
      setupId: id,
      ...takesOf(plan, id),
      ground: needsOf(plan, id).ground ?? null,
    }),
  );
  const meal = night?.meal ?? USUAL_NIGHT.meal;
  const places = new Map(plan.setups.map(({ id }, place) => [id, place]));
  return {
    clock,
    call,
    jobs,
    legs: jobs.map(({ move }, from) => dryMinutesFrom(beginnings, from).map((minutes) => move + minutes)),
    beginnings,
    demands: demandsOf(plan, clock),
    mealBy: call + Math.round(meal.afterHours * 60),
    mealMinutes: meal.minutes,
    wetDownMinutes: costOf(plan, 'wetDown'),
    driesMinutes: night?.dries ?? USUAL_NIGHT.dries,
    strikeMinutes: night?.strike ?? USUAL_NIGHT.strike,
    order: setupsInOrder(plan).flatMap(({ id }) => places.get(id) ?? []),
  };
}
