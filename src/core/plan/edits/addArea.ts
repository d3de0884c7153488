import { itemsOf } from '../items';
import type { WetArea } from '../schema/ground';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { withAreas } from './areas';
import { freeId } from './freeId';
import { MOST } from './limits';
import { tidySpot } from './tidy';

/**
 * Lays a wet or a dry area over the ground and over the areas that are there, 3 to 60 corners [x, z], metres. A plan
 * with 60 of them stays as it is.
 */
export function addArea(
  plan: Plan,
  { wetness, outline }: Pick<WetArea, 'wetness'> & { readonly outline: readonly Spot[] },
): Plan {
  const areas = plan.ground.areas ?? [];
  if (areas.length >= MOST.areas || outline.length < 3 || outline.length > MOST.areaCorners) return plan;
  // Not an item's id either: both go by their ids on the drawing.
  const taken = [...areas, ...itemsOf(plan).map(({ record }) => record)];
  return withAreas(plan, [...areas, { id: freeId(taken, 'area'), wetness, outline: outline.map(tidySpot) }]);
}
