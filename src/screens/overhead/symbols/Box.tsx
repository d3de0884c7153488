import { modelSize } from '../../../core/form/models/modelShapes';
import { polygon, polyline } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { PieceOf } from './kinds';

/** A box or a model: its outline and one diagonal, as a closed volume is drawn. */
export function Box({ piece }: { readonly piece: PieceOf<'box' | 'model'> }) {
  const [width, , depth] = piece.kind === 'model' ? modelSize(piece) : piece.size;
  const material = piece.kind === 'box' ? piece.material : 'concrete';
  const own = (x: number, z: number): Spot =>
    standing([piece.at[0], piece.at[2]], piece.headingDegrees, [(x * width) / 2, (z * depth) / 2]);
  return (
    <>
      <path
        className={material === 'brick' ? 'item brick' : material === 'timber' ? 'item boards' : 'item'}
        d={polygon([own(-1, -1), own(1, -1), own(1, 1), own(-1, 1)])}
      />
      <path className="hair" d={polyline([own(-1, 1), own(1, -1)])} />
    </>
  );
}
