import type { Piece } from '../../../core/plan/schema/pieces';
import type { Ground } from '../../../core/plan/schema/plan';
import { ModelSymbol } from './ModelSymbol';
import { StillPiece } from './StillPiece';

/** A set piece as it is drawn from above. Decks are the ground itself, and the skyline lies beyond the sheet. */
export function PieceSymbol({ piece, ground }: { readonly piece: Piece; readonly ground: Ground }) {
  return piece.kind === 'model' ? (
    <ModelSymbol piece={piece} />
  ) : (
    <StillPiece piece={piece} ground={ground} />
  );
}
