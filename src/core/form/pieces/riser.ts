import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';

/** A closed `top` to stand on; `size[1]` is the height of what one stands on. */
export function riserParts(riser: PieceOf<'riser'>): readonly PlacedPart[] {
  const builder = new ShapeBuilder().box([0, riser.size[1] / 2, 0], riser.size);
  return [fixed('top', builder.finish({ substance: 'boards' }, standingAt(riser.at, riser.headingDegrees)))];
}
