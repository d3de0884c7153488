import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { withArea } from './areas';
import { withinReach } from './motion';
import { tidyMetres, tidySpot } from './tidy';

/** Moves a wet area by [x, z], metres; the way is cut short where it would leave the 5 km that a plan may hold. */
export function moveArea(plan: Plan, { id, by }: { readonly id: string; readonly by: Spot }): Plan {
  return withArea(plan, id, (area) => {
    const [x, z] = [0, 1].map((axis) =>
      withinReach(
        area.outline.map((spot) => spot[axis]),
        tidyMetres(by[axis]),
      ),
    );
    if (x === 0 && z === 0) return area;
    return { ...area, outline: area.outline.map((spot) => tidySpot([spot[0] + x, spot[1] + z])) };
  });
}
