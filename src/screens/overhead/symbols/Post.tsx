import { circle, polyline } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { PieceOf } from './kinds';
import { Dots } from './Marks';

/** A post as a point of ink, its crossbar across the heading. */
export function Post({ piece }: { readonly piece: PieceOf<'post'> }) {
  const at: Spot = [piece.at[0], piece.at[2]];
  const half = piece.armMetres / 2;
  const end = (side: number): Spot => standing(at, piece.headingDegrees, [side * half, 0]);
  return (
    <>
      {half > 0 && <path className="thin" d={polyline([end(-1), end(1)])} />}
      <path className="solid" d={circle(at, piece.diameterMetres / 2)} />
      <Dots at={[at]} kind="post" />
    </>
  );
}
