import type { Ground } from '../../plan/schema/plan';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';
import { LEVEL, prism, sheet } from './making/prism';

/** The building's walls start this far below the surface, so that the two never fight for a pixel. */
const BELOW_METRES = 0.02;

/**
 * A roof deck: `top`, the walking surface as a sheet that faces up and mirrors when the ground is wet down or
 * puddled, and `walls`, the closed body of the building below it.
 */
export function deckParts(deck: PieceOf<'deck'>, ground: Ground): readonly PlacedPart[] {
  const top = new ShapeBuilder();
  sheet(top, deck.outline, deck.topMetres, LEVEL);
  const walls = new ShapeBuilder();
  const gap = Math.min(BELOW_METRES, deck.dropMetres / 2);
  prism(walls, deck.outline, deck.topMetres - deck.dropMetres, deck.topMetres - gap, LEVEL);
  const [x, z] = deck.outline[0];
  const isMirror = ground.wetness === 'wet down' || ground.wetness === 'puddled';
  return [
    fixed(
      'top',
      top.finish({
        substance: ground.surface,
        ...(isMirror && { mirror: { normal: [0, 1, 0], point: [x, deck.topMetres, z] } }),
      }),
    ),
    fixed('walls', walls.finish({ substance: 'brick' })),
  ];
}
