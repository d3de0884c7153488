import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { openedRun } from './making/openedRun';
import { placedOpenings, uncut } from './making/openings';
import { fixed, type PieceOf } from './making/placed';
import { run, type SectionCorner } from './making/run';
import { substanceOf } from './making/substances';

/** How far the coping reaches over the wall on either side; common practice, no source. */
const OVERSAIL_METRES = 0.04;

/** How thick a parapet is where it is thickest, metres: over its coping. */
export const parapetThickness = (parapet: PieceOf<'parapet'>): number =>
  parapet.thicknessMetres + (copingOf(parapet) > 0 ? 2 * OVERSAIL_METRES : 0);

const copingOf = ({ copingMetres, heightMetres }: PieceOf<'parapet'>): number =>
  Math.min(copingMetres, heightMetres / 2);

/**
 * A parapet centred on its path: `wall`, and `coping` on top of it, weathered to both sides. Its openings go through
 * the wall, and through the coping where they reach above the wall.
 */
export function parapetParts(parapet: PieceOf<'parapet'>): readonly PlacedPart[] {
  const { baseMetres, heightMetres, thicknessMetres } = parapet;
  const coping = copingOf(parapet);
  const thickest = parapetThickness(parapet);
  const top = baseMetres + heightMetres;
  const wall = new ShapeBuilder();
  openedRun(wall, parapet, { thickness: thicknessMetres, low: baseMetres, high: top - coping }, thickest);
  const parts = [fixed('wall', wall.finish({ substance: substanceOf(parapet.material) }))];
  if (coping > 0) {
    const builder = new ShapeBuilder();
    const cuts = placedOpenings(parapet, thickest).filter(({ high }) => high > heightMetres - coping + 1e-4);
    for (const { path, closed } of uncut(parapet, cuts)) {
      run(builder, path, closed, copingSection(thicknessMetres / 2 + OVERSAIL_METRES, top - coping, top));
    }
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
