import { formOf } from '../../core/form/formsAt';
import type { Plan } from '../../core/plan/schema/plan';
import { isMirroring, wetnessesOf } from '../../core/plan/wetness';

/** Whether any of a deck mirrors. Forms are remembered, so that a view may ask this every time it is drawn. */
const mirrors = (plan: Plan, deckId: string): boolean =>
  formOf(plan, deckId, 0)?.parts.some(({ shape }) => shape.mirror !== null) === true;

/**
 * Level of the wet deck that a camera at `position` mirrors: the highest one below it whose outline it stands over,
 * else the highest one below it; null when no deck mirrors. Metres.
 */
export function mirrorHeightUnder(plan: Plan, position: readonly [number, number, number]): number | null {
  if (!wetnessesOf(plan.ground).some(isMirroring)) return null;
  let best: { readonly top: number; readonly over: boolean } | null = null;
  for (const piece of plan.pieces) {
    if (piece.kind !== 'deck' || piece.topMetres >= position[1] || !mirrors(plan, piece.id)) continue;
    const over = isOver(piece.outline, position[0], position[2]);
    if (!best || (over && !best.over) || (over === best.over && piece.topMetres > best.top)) {
      best = { top: piece.topMetres, over };
    }
  }
  return best?.top ?? null;
}

/** Even-odd rule: whether a place lies inside an outline. */
function isOver(outline: readonly (readonly [number, number])[], x: number, z: number): boolean {
  let inside = false;
  for (let k = 0, before = outline.length - 1; k < outline.length; before = k, k += 1) {
    const [ax, az] = outline[k];
    const [bx, bz] = outline[before];
    if (az > z !== bz > z && x < ((bx - ax) * (z - az)) / (bz - az) + ax) inside = !inside;
  }
  return inside;
}
