import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { anchorOf } from './anchorOf';
import { moveItems } from './moveItems';

/**
 * Moves an item over the deck so that its anchor (see `anchorOf`) comes to [x, z], metres, with all that goes along
 * (see `moveItems`). Runs, lines and performers move whole. A locked item stays, unless `evenLocked`.
 */
export function moveItem(
  plan: Plan,
  { id, to, evenLocked = false }: { readonly id: string; readonly to: Spot; readonly evenLocked?: boolean },
): Plan {
  const from = anchorOf(plan, id);
  return from ? moveItems(plan, { ids: [id], by: [to[0] - from[0], to[1] - from[1]], evenLocked }) : plan;
}
