import type { Plan } from '../schema/plan';

/** Length of the action in a plan that has no beats yet. */
const FIRST_ACTION_SECONDS = 8;

/** The plan with a first and a last beat where it had none; else the same plan. */
export function withBeats(plan: Plan): Plan {
  if (plan.beats.length > 0) return plan;
  return {
    ...plan,
    beats: [
      { id: 'begin', label: 'Begin', atSeconds: 0 },
      { id: 'end', label: 'End', atSeconds: FIRST_ACTION_SECONDS },
    ],
  };
}
