import { pieceParts } from '../../../core/form/pieces';
import type { Ground } from '../../../core/plan/schema/plan';
import { polyline } from '../geometry/paths';
import type { PieceOf } from './kinds';
import { Dots } from './Marks';

/** A line overhead, dashed as what hangs above the cut, with the edges of the cloths on it. */
export function Line({ piece, ground }: { readonly piece: PieceOf<'line'>; readonly ground: Ground }) {
  const [from, to] = [piece.from, piece.to].map(([x, , z]) => [x, z] as const);
  return (
    <>
      <path className="dashhair" d={polyline([from, to])} />
      {piece.cloths > 0 && <path className="washing" d={clothEdges(piece, ground)} />}
      <Dots at={[from, to]} kind="peg" />
    </>
  );
}

/** Where the top edge of each cloth runs: the first and the last of every row of its corners that lie on the line. */
function clothEdges(piece: PieceOf<'line'>, ground: Ground): string {
  const cloths = pieceParts(piece, ground).find((part) => part.name === 'cloths');
  if (!cloths) return '';
  const { positions, indices } = cloths.shape;
  const perCloth = positions.length / 3 / piece.cloths;
  if (!Number.isInteger(perCloth) || indices.length === 0) return '';
  return Array.from({ length: piece.cloths }, (_, cloth) => {
    const spots = Array.from({ length: perCloth }, (_, corner) => {
      const at = (cloth * perCloth + corner) * 3;
      return [positions[at], positions[at + 2]] as const;
    });
    const share = ([x, z]: readonly [number, number]) =>
      (x - piece.from[0]) * (piece.to[0] - piece.from[0]) +
      (z - piece.from[2]) * (piece.to[2] - piece.from[2]);
    const along = [...spots].sort((a, b) => share(a) - share(b));
    return polyline([along[0], along[along.length - 1]]);
  }).join('');
}
