import { circle, polygon } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { PieceOf } from './kinds';

/** Radius of a common pot, as the chimney's form has it, metres. */
const POT = 0.13;

/** A stack in brick with its pots in a row. */
export function Chimney({ piece }: { readonly piece: PieceOf<'chimney'> }) {
  const [width, , depth] = piece.size;
  const own = (x: number, z: number): Spot =>
    standing([piece.at[0], piece.at[2]], piece.headingDegrees, [x, z]);
  const [long, short] = [Math.max(width, depth), Math.min(width, depth)];
  const radius = Math.min(POT, (long / Math.max(1, piece.pots)) * 0.45, short * 0.45);
  const pots = Array.from({ length: piece.pots }, (_, pot) => {
    const along = long * ((pot + 0.5) / piece.pots - 0.5);
    return width >= depth ? own(along, 0) : own(0, along);
  });
  return (
    <>
      <path
        className="piece brick"
        d={polygon([
          own(-width / 2, -depth / 2),
          own(width / 2, -depth / 2),
          own(width / 2, depth / 2),
          own(-width / 2, depth / 2),
        ])}
      />
      <path className="inner" d={pots.map((pot) => circle(pot, radius)).join('')} />
    </>
  );
}
