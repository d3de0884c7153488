import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { openedRun } from './making/openedRun';
import { fixed, type PieceOf } from './making/placed';
import { substanceOf } from './making/substances';

/** A plain wall centred on its path, with its openings through it. */
export function wallParts(wall: PieceOf<'wall'>): readonly PlacedPart[] {
  const { baseMetres, heightMetres, thicknessMetres } = wall;
  const builder = new ShapeBuilder();
  openedRun(builder, wall, {
    thickness: thicknessMetres,
    low: baseMetres,
    high: baseMetres + heightMetres,
  });
  return builder.isEmpty ? [] : [fixed('wall', builder.finish({ substance: substanceOf(wall.material) }))];
}
