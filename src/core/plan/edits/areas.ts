import type { WetArea } from '../schema/ground';
import type { Plan } from '../schema/plan';
import { changed } from './motion';

/** The plan with other wet areas; where there are none the field is left out. The same plan for the same list. */
export function withAreas(plan: Plan, areas: WetArea[]): Plan {
  if (areas === plan.ground.areas) return plan;
  const { areas: before, ...ground } = plan.ground;
  if (areas.length === 0) return before === undefined ? plan : { ...plan, ground };
  return { ...plan, ground: { ...ground, areas } };
}

/** The plan with one wet area changed; the same where it stays as it is. */
export const withArea = (plan: Plan, id: string, change: (area: WetArea) => WetArea): Plan =>
  plan.ground.areas
    ? withAreas(
        plan,
        changed(plan.ground.areas, (area) => (area.id === id ? change(area) : area)),
      )
    : plan;
