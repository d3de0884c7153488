import { length, subtract } from '../form/build/vector';
import { whereabouts } from '../form/figure/whereabouts';
import { cameraAt } from '../optics/camera';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import type { Refused } from './advice';
import { aimForHighlight, type HighlightAdvice } from './aimForHighlight';

/** From between the feet towards the lens, so that the highlight lies before the shoes. Source: common practice, no source */
const BEFORE_FEET_METRES = 0.5;

/** Where a lamp has to be for its highlight to lie before a performer's feet, as a setup's lens sees them. */
export function highlightAtFeet(
  plan: Plan,
  setup: Setup,
  lampId: string,
  performerId: string,
  seconds: number,
): HighlightAdvice | Refused {
  const acted = played(plan, setup);
  const performer = acted.cast.find(({ id }) => id === performerId);
  const place = performer && whereabouts(performer, acted, seconds);
  if (!place) return { refused: 'There is nobody on a mark to bring it to.' };
  const [x, , z] = subtract(cameraAt(plan, setup, seconds).pose.position, place.at);
  const level = Math.max(1e-6, length([x, 0, z]));
  const step = Math.min(BEFORE_FEET_METRES, level / 2) / level;
  return aimForHighlight(plan, setup, lampId, [place.at[0] + x * step, place.at[2] + z * step], seconds);
}
