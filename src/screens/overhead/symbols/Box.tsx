import { polygon, polyline } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { PieceOf } from './kinds';

/** A box: its outline and one diagonal, as a closed volume is drawn. */
export function Box({ piece }: { readonly piece: PieceOf<'box'> }) {
  const [width, , depth] = piece.size;
  const { material } = piece;
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
