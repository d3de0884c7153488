import { deckParts } from '../../form/pieces/deck';
import type { PartShape } from '../../form/types';
import type { Plan } from '../../plan/schema/plan';

/** The area of a level sheet, square metres. */
function sheetArea({ positions, indices }: PartShape): number {
  let twice = 0;
  for (let k = 0; k < indices.length; k += 3) {
    const [a, b, c] = [indices[k] * 3, indices[k + 1] * 3, indices[k + 2] * 3];
    const [ax, az] = [positions[b] - positions[a], positions[b + 2] - positions[a + 2]];
    const [bx, bz] = [positions[c] - positions[a], positions[c + 2] - positions[a + 2]];
    twice += Math.abs(ax * bz - az * bx);
  }
  return twice / 2;
}

/** How much of the decks is wet down or puddled, square metres: the very sheets that mirror in frame. */
export const wetSquareMetres = (plan: Plan): number =>
  plan.pieces.reduce((sum, piece) => {
    if (piece.kind !== 'deck') return sum;
    const mirrors = deckParts(piece, plan.ground).filter(({ shape }) => shape.mirror !== null);
    return sum + mirrors.reduce((area, { shape }) => area + sheetArea(shape), 0);
  }, 0);
