import type { Spot } from '../schema/numbers';
import type { Bounds } from './planar';

/** The floor of a walk, lowest and highest, metres. */
export type Floor = readonly [lowest: number, highest: number];

/** Something that a walk does not go through: the outline of a solid on the floor, or the edge of a deck or a hole. */
export interface Obstacle {
  readonly pieceId: string;
  readonly kind: 'solid' | 'edge' | 'hole';
  /** Convex, wound as `fromOutline` has it; two corners for an edge. */
  readonly outline: readonly Spot[];
  readonly bounds: Bounds;
  /** From where to where it is solid, metres above the deck's zero. */
  readonly bottomMetres: number;
  readonly topMetres: number;
}
