import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';
import { substanceOf } from './making/substances';

/** A plain closed `box` of the record's size. */
export function boxParts(box: PieceOf<'box'>): readonly PlacedPart[] {
  const builder = new ShapeBuilder().box([0, box.size[1] / 2, 0], box.size);
  const placement = standingAt(box.at, box.headingDegrees);
  return [fixed('box', builder.finish({ substance: substanceOf(box.material) }, placement))];
}
