import { spacedAlong, tidyPath } from '../../../core/form/pieces/making/path';
import { meshAlong, polyline, squareAt } from '../geometry/paths';
import { segmentsOf } from '../geometry/runs';
import type { PieceOf } from './kinds';
import { Dots } from './Marks';

/** How wide mesh is drawn, metres: wire itself would be no more than a hairline. */
export const MESH_BAND = 0.2;

/** Crossed mesh between square posts; without mesh two rails. */
export function Fence({ piece }: { readonly piece: PieceOf<'fence'> }) {
  const run = tidyPath(piece.path, piece.closed);
  const posts = spacedAlong(run.corners, run.closed, piece.postEveryMetres);
  const legs = segmentsOf(piece.path, piece.closed);
  return (
    <>
      {piece.mesh ? (
        <path className="hair" d={legs.map(({ from, to }) => meshAlong(from, to, MESH_BAND)).join('')} />
      ) : (
        <path className="thin" d={legs.map(({ from, to }) => polyline([from, to])).join('')} />
      )}
      <path className="solid" d={posts.map((post) => squareAt(post, piece.postMetres)).join('')} />
      <Dots at={posts} kind="square-post" />
    </>
  );
}
