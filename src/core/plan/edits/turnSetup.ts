import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';
import { orSame } from './motion';

/** How far a pan may be written, degrees to either side, as the schema has it. */
const WIDEST_PAN = 720;

/**
 * Pans a setup's camera by so many degrees, clockwise seen from above, at every key. A pan so wide that its keys
 * could not be written any more stays.
 */
export function turnSetup(
  plan: Plan,
  { setupId, byDegrees }: { readonly setupId: string; readonly byDegrees: number },
): Plan {
  if (byDegrees === 0) return plan;
  return editSetup(plan, setupId, (setup) => {
    const turned = setup.move.keys.map((key) => key.headingDegrees + byDegrees);
    // Whole turns come off all keys together, so that a pan past north stays one pan.
    const wholeTurns = Math.round((turned[0] ?? 0) / 360) * 360;
    if (turned.some((degrees) => Math.abs(degrees - wholeTurns) > WIDEST_PAN)) return setup;
    const keys = setup.move.keys.map((key, index) => ({
      ...key,
      headingDegrees: (turned[index] ?? key.headingDegrees) - wholeTurns,
    }));
    return orSame(setup, { ...setup, move: { ...setup.move, keys } });
  });
}
