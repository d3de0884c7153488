import type { Gear } from '../../../core/plan/schema/gear';
import type { Piece } from '../../../core/plan/schema/pieces';

export type PieceOf<Kind extends Piece['kind']> = Extract<Piece, { kind: Kind }>;
export type GearOf<Kind extends Gear['kind']> = Extract<Gear, { kind: Kind }>;
