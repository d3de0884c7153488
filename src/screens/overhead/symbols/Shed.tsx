import { meshAlong, polygon, polyline } from '../geometry/paths';
import { between, type Spot, standing } from '../geometry/spots';
import { MESH_BAND } from './Fence';
import type { PieceOf } from './kinds';
import { Dots } from './Marks';

/** Width of a bay of the front, as the shed's form has it. */
const BAY = 1.5;

/** Boarded on three sides, its front of mesh, of boards or open; the roof above as a dashed hairline. */
export function Shed({ piece }: { readonly piece: PieceOf<'shed'> }) {
  const [width, , depth] = piece.size;
  const own = (x: number, z: number): Spot =>
    standing([piece.at[0], piece.at[2]], piece.headingDegrees, [x, z]);
  const rectangle = (x: number, z: number): Spot[] => [own(-x, -z), own(x, -z), own(x, z), own(-x, z)];
  const [left, right, backRight, backLeft] = rectangle(width / 2, depth / 2);
  const bays = Math.max(1, Math.ceil(width / BAY));
  const posts = Array.from({ length: bays + 1 }, (_, bay) => between(left, right, bay / bays));
  // Shelves and nest boxes along the back carry the boards' hatching, so that the room in front of them reads as room.
  const shelf = depth / 2 - Math.min(0.55, depth * 0.4);
  return (
    <>
      <path className="shed-floor" d={polygon([left, right, backRight, backLeft])} />
      {piece.shelves > 0 && (
        <path
          className="boards thin-edge"
          d={polygon([own(-width / 2, shelf), own(width / 2, shelf), backRight, backLeft])}
        />
      )}
      <path className="piece open-run" d={polyline([left, backLeft, backRight, right])} />
      {piece.front === 'mesh' && <path className="hair" d={meshAlong(left, right, MESH_BAND)} />}
      {piece.front === 'boards' && <path className="piece open-run" d={polyline([left, right])} />}
      {piece.front !== 'boards' && <Dots at={posts} kind="square-post" />}
      {piece.overhangMetres > 0 && (
        <path
          className="dashhair"
          d={polygon(rectangle(width / 2 + piece.overhangMetres, depth / 2 + piece.overhangMetres))}
        />
      )}
    </>
  );
}
