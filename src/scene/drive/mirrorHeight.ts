import type { Plan } from '../../core/plan/schema/plan';

/**
 * Level of the wet deck that a camera at `position` mirrors: the highest one below it whose outline it stands over,
 * else the highest one below it; null when the ground does not mirror. Metres.
 */
export function mirrorHeightUnder(plan: Plan, position: readonly [number, number, number]): number | null {
  const { wetness } = plan.ground;
  if (wetness !== 'wet down' && wetness !== 'puddled') return null;
  let best: { readonly top: number; readonly over: boolean } | null = null;
  for (const piece of plan.pieces) {
    if (piece.kind !== 'deck' || piece.topMetres >= position[1]) continue;
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
