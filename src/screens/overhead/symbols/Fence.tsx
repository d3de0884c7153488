import { fencePosts } from '../../../core/form/pieces/fence';
import { uncut } from '../../../core/form/pieces/making/openings';
import { openingsOf } from '../../../core/form/pieces/openingsOf';
import { meshAlong, polyline, squareAt } from '../geometry/paths';
import { segmentsOf } from '../geometry/runs';
import type { PieceOf } from './kinds';
import { Dots } from './Marks';

/** How wide mesh is drawn, metres: wire itself would be no more than a hairline. */
export const MESH_BAND = 0.2;

/** Crossed mesh between square posts; without mesh two rails. Gates are left open, under a dashed line. */
export function Fence({ piece }: { readonly piece: PieceOf<'fence'> }) {
  const posts = fencePosts(piece);
  const gates = openingsOf(piece);
  const legs = uncut(piece, gates).flatMap(({ path, closed }) => segmentsOf(path, closed));
  return (
    <>
      {piece.mesh ? (
        <path className="hair" d={legs.map(({ from, to }) => meshAlong(from, to, MESH_BAND)).join('')} />
      ) : (
        <path className="thin" d={legs.map(({ from, to }) => polyline([from, to])).join('')} />
      )}
      {gates.length > 0 && (
        <path className="dashhair" d={gates.map(({ from, to }) => polyline([from, to])).join('')} />
      )}
      <path className="solid" d={posts.map((post) => squareAt(post, piece.postMetres)).join('')} />
      <Dots at={posts} kind="square-post" />
    </>
  );
}
