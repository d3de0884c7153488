import { polygon } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { PieceOf } from './kinds';

/** How far the frame under the boards is drawn within their edge, metres. */
const FRAME = 0.08;

/** A riser: its boards, and the frame that carries them; how high it is stands beside its name. */
export function Riser({ piece }: { readonly piece: PieceOf<'riser'> }) {
  const [width, , depth] = piece.size;
  const around = (x: number, z: number): Spot[] =>
    (
      [
        [-x, -z],
        [x, -z],
        [x, z],
        [-x, z],
      ] as const
    ).map((own) => standing([piece.at[0], piece.at[2]], piece.headingDegrees, own));
  const frame = Math.min(FRAME, width / 8, depth / 8);
  return (
    <>
      <path className="item boards" d={polygon(around(width / 2, depth / 2))} />
      <path className="hair" d={polygon(around(width / 2 - frame, depth / 2 - frame))} />
    </>
  );
}
