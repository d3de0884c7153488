import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';
import { run, type SectionCorner, uprightSection } from './making/run';
import { substanceOf } from './making/substances';

/** How far the coping reaches over the wall on either side; common practice, no source. */
const OVERSAIL_METRES = 0.04;

/** A parapet centred on its path: `wall`, and `coping` on top of it, weathered to both sides. */
export function parapetParts(parapet: PieceOf<'parapet'>): readonly PlacedPart[] {
  const { path, closed, baseMetres, heightMetres, thicknessMetres } = parapet;
  const coping = Math.min(parapet.copingMetres, heightMetres / 2);
  const top = baseMetres + heightMetres;
  const wall = new ShapeBuilder();
  run(wall, path, closed, uprightSection(thicknessMetres, baseMetres, top - coping));
  const parts = [fixed('wall', wall.finish({ substance: substanceOf(parapet.material) }))];
  if (coping > 0) {
    const builder = new ShapeBuilder();
    run(builder, path, closed, copingSection(thicknessMetres / 2 + OVERSAIL_METRES, top - coping, top));
    parts.push(fixed('coping', builder.finish({ substance: 'concrete' })));
  }
  return parts.filter((part) => part.shape.indices.length > 0);
}

/** A slab whose upper side falls from a ridge in the middle to its edges. */
function copingSection(half: number, low: number, high: number): readonly SectionCorner[] {
  const edge = low + (high - low) * 0.75;
  return [
    [-half, low],
    [half, low],
    [half, edge],
    [0, high],
    [-half, edge],
  ];
}
