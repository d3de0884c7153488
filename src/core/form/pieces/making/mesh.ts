import type { Mesh } from '../../../plan/schema/pieces';

/**
 * Share of light that passes square woven wire seen square on: (1 − wire ÷ cell)², the open square over the whole
 * cell. `cellMetres` is the pitch from wire to wire. 0 where the wire fills the cell.
 */
export function opennessOf({ cellMetres, wireMetres }: Mesh): number {
  const gap = Math.max(0, 1 - wireMetres / cellMetres);
  return gap * gap;
}
