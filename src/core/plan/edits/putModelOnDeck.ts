import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { tidyCoordinate } from './tidy';

/**
 * Raises or lowers a model so that a height on it comes to lie on another: `foundMetres` is where a surface of the
 * model lies now, `deckMetres` where it belongs.
 */
export function putModelOnDeck(
  plan: Plan,
  args: { readonly id: string; readonly foundMetres: number; readonly deckMetres: number },
): Plan {
  const by = args.deckMetres - args.foundMetres;
  return editRecord(plan, args.id, {
    piece: (piece) => {
      if (piece.kind !== 'model') return piece;
      const height = tidyCoordinate(piece.at[1] + by);
      return height === piece.at[1] ? piece : { ...piece, at: [piece.at[0], height, piece.at[2]] };
    },
  });
}
