import { circle, polyline, squareAt } from '../geometry/paths';
import { type Spot, standing } from '../geometry/spots';
import type { PieceOf } from './kinds';

/** The drum with its lid, and dashed under it the legs and their braces, where the tank's form has them. */
export function Tank({ piece }: { readonly piece: PieceOf<'tank'> }) {
  const at: Spot = [piece.at[0], piece.at[2]];
  const radius = piece.diameterMetres / 2;
  const corner = (x: number, z: number, out: number): Spot =>
    standing(at, piece.headingDegrees, [x * radius * out, z * radius * out]);
  const corners: readonly (readonly [number, number])[] = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ];
  const feet = corners.map(([x, z]) => corner(x, z, 0.74));
  const tops = corners.map(([x, z]) => corner(x, z, 0.6));
  const size = Math.min(0.12, radius / 3);
  return (
    <>
      <path className="piece boards" d={circle(at, radius)} />
      <path className="thin" d={circle(at, radius * 0.9)} />
      {piece.legMetres > 0 && (
        <>
          <path className="dashhair" d={polyline([...tops, tops[0]])} />
          <path className="dashhair" d={feet.map((foot, leg) => polyline([foot, tops[leg]])).join('')} />
          <path
            className="solid"
            d={feet.map((foot) => squareAt(foot, size, piece.headingDegrees)).join('')}
          />
        </>
      )}
    </>
  );
}
