import type { Plan } from '../schema/plan';
import { footOf } from '../surfaces';
import { raiseItems } from './raiseItems';

/**
 * Puts the foot of a standing thing, or the middle of a hanging one, so many metres above the deck, locked or not, with
 * what stands on it; others stay.
 */
export function setBaseHeight(
  plan: Plan,
  { id, metres }: { readonly id: string; readonly metres: number },
): Plan {
  const foot = footOf(plan, id);
  return foot ? raiseItems(plan, { ids: [id], byMetres: metres - foot.metres, evenLocked: true }) : plan;
}
