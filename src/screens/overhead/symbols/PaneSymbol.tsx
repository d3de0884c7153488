import { polygon, polyline } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { PieceOf } from './kinds';

/** Depth of the frame as the pane's form has it, metres. */
const DEPTH = 0.04;

/** Glass as two thin lines in a frame; a mirror with short strokes behind its silver. */
export function PaneSymbol({ piece }: { readonly piece: PieceOf<'pane'> }) {
  const half = piece.widthMetres / 2;
  const own = (x: number, z: number): Spot =>
    standing([piece.at[0], piece.at[2]], piece.headingDegrees, [x, z]);
  const count = Math.max(2, Math.round(piece.widthMetres / 0.2));
  const strokes = Array.from({ length: count }, (_, stroke) => {
    const x = -half + ((stroke + 0.5) * piece.widthMetres) / count;
    return polyline([own(x, 0), own(x + 0.08, 0.12)]);
  });
  return (
    <>
      <path
        className="thin"
        d={polygon([
          own(-half, -DEPTH / 2),
          own(half, -DEPTH / 2),
          own(half, DEPTH / 2),
          own(-half, DEPTH / 2),
        ])}
      />
      {piece.finish === 'mirror' && <path className="hair" d={strokes.join('')} />}
    </>
  );
}
