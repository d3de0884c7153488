import type { Ground } from '../../plan/schema/plan';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { holesThatFit } from './making/holes';
import { fixed, type PieceOf } from './making/placed';
import { LEVEL, prism, sheet } from './making/prism';

/** The building's walls start this far below the surface, so that the two never fight for a pixel. */
const BELOW_METRES = 0.02;
/** What is left under a hole: the floor of its well lies this far above the foot of the walls. */
const WELL_FLOOR_METRES = 0.1;

/**
 * A roof deck: `top`, the walking surface as a sheet that faces up and mirrors when the ground is wet down or
 * puddled, and `walls`, the closed body of the building below it. A hole goes through the
 * surface and down the building as a well with a floor at the foot of the walls.
 */
export function deckParts(deck: PieceOf<'deck'>, ground: Ground): readonly PlacedPart[] {
  const top = new ShapeBuilder();
  const holes = holesThatFit(
    deck.outline,
    (deck.holes ?? []).map(({ outline }) => outline),
  );
  sheet(top, deck.outline, deck.topMetres, LEVEL, holes);
  const walls = new ShapeBuilder();
  const gap = Math.min(BELOW_METRES, deck.dropMetres / 2);
  const foot = deck.topMetres - deck.dropMetres;
  prism(walls, deck.outline, foot, deck.topMetres - gap, LEVEL, {
    outlines: holes,
    floor: foot + Math.min(WELL_FLOOR_METRES, (deck.dropMetres - gap) / 2),
  });
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
