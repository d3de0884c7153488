import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';

/** The box that a model takes up: [width, height, depth] in metres, in its own frame on the roof. */
export function modelSize(model: PieceOf<'model'>): readonly [number, number, number] {
  const { lowest, highest } = model.extent;
  const [x, y, z] = lowest.map((low, axis) => Math.abs(highest[axis] - low) * model.metresPerUnit);
  return model.up === 'y' ? [x, y, z] : [x, z, y];
}

/** What stands for an imported model while its file is not there: a closed `box` of its size. */
export function modelParts(model: PieceOf<'model'>): readonly PlacedPart[] {
  const size = modelSize(model);
  const builder = new ShapeBuilder().box([0, size[1] / 2, 0], size);
  return [
    fixed('box', builder.finish({ substance: 'concrete' }, standingAt(model.at, model.headingDegrees))),
  ];
}
