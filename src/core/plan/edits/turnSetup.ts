import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';

/** Pans a setup's camera by so many degrees, clockwise seen from above, at every key. */
export function turnSetup(
  plan: Plan,
  { setupId, byDegrees }: { readonly setupId: string; readonly byDegrees: number },
): Plan {
  if (byDegrees === 0) return plan;
  return editSetup(plan, setupId, (setup) => {
    const turned = setup.move.keys.map((key) => key.headingDegrees + byDegrees);
    // Whole turns come off all keys together, so that a pan past north stays one pan.
    const wholeTurns = Math.round((turned[0] ?? 0) / 360) * 360;
    const keys = setup.move.keys.map((key, index) => ({
      ...key,
      headingDegrees: (turned[index] ?? key.headingDegrees) - wholeTurns,
    }));
    return { ...setup, move: { ...setup.move, keys } };
  });
}
