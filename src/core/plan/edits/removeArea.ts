import type { Plan } from '../schema/plan';
import { withAreas } from './areas';
import { keptOf } from './optionalLists';

/** Takes a wet area away: what lies under it is as wet as it was before. */
export const removeArea = (plan: Plan, { id }: { readonly id: string }): Plan =>
  plan.ground.areas
    ? withAreas(
        plan,
        keptOf(plan.ground.areas, (area) => area.id !== id),
      )
    : plan;
