import { bandPath } from '../geometry/paths';
import { bandOf } from '../geometry/runs';
import type { PieceOf } from './kinds';

const INKS = {
  brick: 'url(#ink-brick)',
  render: 'url(#ink-hatch)',
  concrete: 'url(#ink-hatch)',
  timber: 'url(#ink-boards)',
  metal: 'url(#ink-dense)',
} as const;

/** A parapet or a wall, cut: hatched between its two sides. */
export function Run({ piece }: { readonly piece: PieceOf<'parapet' | 'wall'> }) {
  const path = bandPath(bandOf(piece.path, piece.closed, piece.thicknessMetres));
  return (
    <>
      <path className="wall-fill" fillRule="evenodd" d={path} />
      <path
        className={piece.kind === 'wall' ? 'cut heavy' : 'cut'}
        fill={INKS[piece.material]}
        fillRule="evenodd"
        d={path}
      />
    </>
  );
}
