import type { Underlay } from '../schema/drawing';
import type { Plan } from '../schema/plan';
import { orSame } from './motion';
import { kept, tidyHeading, tidyMetres, tidySpot } from './tidy';

const SMALLEST_PIXEL_METRES = 1e-6;
const LARGEST_PIXEL_METRES = 100;

/** Lays a photo or a drawing under the roof, changes how it lies, or, with null, takes it away. */
export function setUnderlay(plan: Plan, { underlay }: { readonly underlay: Underlay | null }): Plan {
  if (underlay) {
    const tidied: Underlay = {
      ...underlay,
      at: tidySpot(underlay.at),
      headingDegrees: tidyHeading(underlay.headingDegrees),
      metresPerPixel: kept(underlay.metresPerPixel, SMALLEST_PIXEL_METRES, LARGEST_PIXEL_METRES),
      strength: kept(tidyMetres(underlay.strength), 0, 1),
    };
    return plan.underlay && orSame(plan.underlay, tidied) === plan.underlay
      ? plan
      : { ...plan, underlay: tidied };
  }
  const { underlay: before, ...rest } = plan;
  return before ? rest : plan;
}
