import type { Plan } from '../schema/plan';
import { orSame } from './motion';

/** What a plan says of itself, of where and when it is, and of what counts as close. */
export interface PlacePatch {
  readonly title?: string;
  readonly notes?: string;
  readonly place?: Partial<Plan['place']>;
  readonly safety?: Partial<Plan['safety']>;
}

/** Changes the plan's title, notes, place, date or safety margin. */
export function setPlace(plan: Plan, { patch }: { readonly patch: PlacePatch }): Plan {
  const { title = plan.title, notes = plan.notes } = patch;
  const place = orSame(plan.place, { ...plan.place, ...patch.place });
  const safety = orSame(plan.safety, { ...plan.safety, ...patch.safety });
  if (title === plan.title && notes === plan.notes && place === plan.place && safety === plan.safety)
    return plan;
  return { ...plan, title, notes, place, safety };
}
