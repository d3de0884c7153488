import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';
import { run, uprightSection } from './making/run';
import { substanceOf } from './making/substances';

/** A plain wall centred on its path. */
export function wallParts(wall: PieceOf<'wall'>): readonly PlacedPart[] {
  const { path, closed, baseMetres, heightMetres, thicknessMetres, material } = wall;
  const builder = new ShapeBuilder();
  run(builder, path, closed, uprightSection(thicknessMetres, baseMetres, baseMetres + heightMetres));
  return builder.isEmpty ? [] : [fixed('wall', builder.finish({ substance: substanceOf(material) }))];
}
