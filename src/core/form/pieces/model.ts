import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import { modelShapes, modelSize } from '../models/modelShapes';
import { modelHeld } from '../models/modelShelf';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';

/**
 * An imported model, in the parts that its file names. While its file is not at hand a closed `box` of its size
 * stands for it.
 */
export function modelParts(model: PieceOf<'model'>): readonly PlacedPart[] {
  const placement = standingAt(model.at, model.headingDegrees);
  const held = modelHeld(model.asset.sha256);
  if (held) return modelShapes(held, model).map((part) => ({ ...part, worldFromPart: placement }));
  const size = modelSize(model);
  const builder = new ShapeBuilder().box([0, size[1] / 2, 0], size);
  return [fixed('box', builder.finish({ substance: 'concrete' }, placement))];
}
