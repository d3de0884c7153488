import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { factorOf, tidyScale } from './scaleModel';
import { tidySpot } from './tidy';

/**
 * Scales the picture under the roof so that two places on it, pressed on the roof, come to lie so many metres apart.
 * The first place stays where it is. Places that are one leave the plan as it is.
 */
export function scaleUnderlay(
  plan: Plan,
  { from, to, metres }: { readonly from: Spot; readonly to: Spot; readonly metres: number },
): Plan {
  const { underlay } = plan;
  const factor = factorOf(from, to, metres);
  if (!underlay || factor === null || factor === 1) return plan;
  return {
    ...plan,
    underlay: {
      ...underlay,
      metresPerPixel: tidyScale(underlay.metresPerPixel * factor),
      at: tidySpot([
        from[0] + (underlay.at[0] - from[0]) * factor,
        from[1] + (underlay.at[1] - from[1]) * factor,
      ]),
    },
  };
}
