import { modelSize } from '../../core/form/models/modelShapes';
import type { Piece } from '../../core/plan/schema/pieces';
import { formatLength, type LengthSystem } from '../../core/units/lengths';

type Model = Extract<Piece, { kind: 'model' }>;

/** How large a model stands on the roof, in words. */
export function sizeWords(model: Model, lengths: LengthSystem): string {
  const [width, height, depth] = modelSize(model).map((metres) => formatLength(metres, lengths));
  return `${width} wide, ${depth} deep, ${height} high`;
}
