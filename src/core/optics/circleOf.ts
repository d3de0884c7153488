import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { glassOf } from './camera';
import { type Coverage, coverageOf } from './coverage';
import { extraction } from './gate';

/** How a setup's image circle lies over its gate and over what is delivered of it. */
export interface SetupCircle {
  readonly gate: Coverage;
  readonly delivery: Coverage;
  /**
   * Half axes of the circle's image in the unsqueezed picture, as shares of the delivered width and height: an ellipse
   * where the lens squeezes. Distortion is left out.
   */
  readonly halfAxes: readonly [ofWidth: number, ofHeight: number];
}

/** Compares a setup's lens with its gate; null where the lens's image circle is not known. */
export function circleOf(plan: Plan, setup: Setup): SetupCircle | null {
  const { lens, gateMm } = glassOf(plan, setup);
  const { imageCircleMm } = lens;
  if (imageCircleMm === undefined) return null;
  const { usedMm } = extraction(gateMm, lens.focalMm, lens.squeeze, setup.delivery);
  return {
    gate: coverageOf(gateMm, imageCircleMm),
    delivery: coverageOf(usedMm, imageCircleMm),
    halfAxes: [imageCircleMm / 2 / usedMm[0], imageCircleMm / 2 / usedMm[1]],
  };
}
