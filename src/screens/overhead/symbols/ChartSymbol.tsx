import { poleBackMetres, squareMetres } from '../../../core/form/pieces/chart';
import { circle, polygon } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { PieceOf } from './kinds';

/** Depth of a board that stands upright, drawn so that it can be seen, and of the plate under it; metres. */
const DEPTH = 0.05;
const PLATE = 0.2;

/** A board edge on, with its squares by turns along it, and the round plate of its pole. */
export function ChartSymbol({ piece }: { readonly piece: PieceOf<'chart'> }) {
  const at: Spot = [piece.at[0], piece.at[2]];
  const half = piece.widthMetres / 2;
  const deep =
    Math.max(DEPTH, piece.heightMetres * Math.abs(Math.sin((piece.tiltDegrees * Math.PI) / 180))) / 2;
  const band = (from: number, to: number): string =>
    polygon(
      (
        [
          [from, -deep],
          [to, -deep],
          [to, deep],
          [from, deep],
        ] as const
      ).map((own) => standing(at, piece.headingDegrees, own)),
    );
  const { face } = piece;
  const side = face.kind === 'squares' ? squareMetres(piece, face) : 0;
  const count = face.kind === 'squares' ? face.columns : 0;
  const dark = Array.from({ length: Math.ceil(count / 2) }, (_, k) => (2 * k - count / 2) * side);
  return (
    <>
      <path
        className="hair"
        d={circle(standing(at, piece.headingDegrees, [0, poleBackMetres(piece)]), PLATE)}
      />
      <path className="item" d={band(-half, half)} />
      <path className="solid" d={dark.map((from) => band(from, from + side)).join('')} />
    </>
  );
}
