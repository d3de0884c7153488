import { hypot } from '../../units/steadyMath';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { tidyPoint } from './tidy';

/** Two places that were pressed, closer than this, say nothing about a size, metres. */
export const LEAST_MEASURED_METRES = 0.01;

/** Significant digits that a scale is kept to: a tenth of a millimetre on a hundred metres, and no noise in the file. */
const DIGITS = 8;
export const tidyScale = (value: number): number => Number(value.toPrecision(DIGITS));

/** The scale that a measured stretch asks for, as a factor; null where the two places are one. */
export function factorOf(from: Spot, to: Spot, metres: number): number | null {
  const now = hypot(to[0] - from[0], to[1] - from[1]);
  return now >= LEAST_MEASURED_METRES && metres >= LEAST_MEASURED_METRES ? metres / now : null;
}

/**
 * Scales a model so that two places on it, pressed on the roof, come to lie so many metres apart. The first place
 * stays where it is, and so does the height of the model's foot. Places that are one leave the plan as it is.
 */
export function scaleModel(
  plan: Plan,
  args: { readonly id: string; readonly from: Spot; readonly to: Spot; readonly metres: number },
): Plan {
  const { id, from, to, metres } = args;
  const factor = factorOf(from, to, metres);
  if (factor === null || factor === 1) return plan;
  return editRecord(plan, id, {
    piece: (piece) =>
      piece.kind === 'model'
        ? {
            ...piece,
            metresPerUnit: tidyScale(piece.metresPerUnit * factor),
            at: tidyPoint([
              from[0] + (piece.at[0] - from[0]) * factor,
              piece.at[1],
              from[1] + (piece.at[2] - from[1]) * factor,
            ]),
          }
        : piece,
  });
}
