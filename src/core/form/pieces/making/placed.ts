import type { Piece } from '../../../plan/schema/pieces';
import type { PartShape, PlacedPart } from '../../types';

/** The record of one kind of set piece. */
export type PieceOf<Kind extends Piece['kind']> = Extract<Piece, { kind: Kind }>;

/** A named part whose shape is in world coordinates already: set pieces do not move. */
export const fixed = (name: string, shape: PartShape): PlacedPart => ({ name, shape, worldFromPart: null });
