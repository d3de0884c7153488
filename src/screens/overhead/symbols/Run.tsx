import type { PlacedOpening } from '../../../core/form/pieces/making/openings';
import { uncut } from '../../../core/form/pieces/making/openings';
import { openingsOf } from '../../../core/form/pieces/openingsOf';
import { bandPath, polyline } from '../geometry/paths';
import { bandOf } from '../geometry/runs';
import { minus, plus, type Spot, times } from '../geometry/spots';
import type { PieceOf } from './kinds';

const INKS = {
  brick: 'url(#ink-brick)',
  render: 'url(#ink-hatch)',
  concrete: 'url(#ink-hatch)',
  timber: 'url(#ink-boards)',
  metal: 'url(#ink-dense)',
} as const;

/** A door wider than this has two leaves, metres; common practice, no source. */
const WIDEST_LEAF = 1.3;

/** A parapet or a wall, cut: hatched between its two sides, broken where something opens in it. */
export function Run({ piece }: { readonly piece: PieceOf<'parapet' | 'wall'> }) {
  const openings = openingsOf(piece);
  const path = uncut(piece, openings)
    .map((run) => bandPath(bandOf(run.path, run.closed, piece.thicknessMetres)))
    .join('');
  return (
    <>
      <path className="wall-fill" fillRule="evenodd" d={path} />
      <path
        className={piece.kind === 'wall' ? 'cut heavy' : 'cut'}
        fill={INKS[piece.material]}
        fillRule="evenodd"
        d={path}
      />
      {openings.map((placed) => (
        <Way key={placed.opening.id} placed={placed} piece={piece} />
      ))}
    </>
  );
}

/** What opens in a run: a window as lines between its sides, a door with its swing, a gap in a parapet as a gap. */
function Way({
  placed,
  piece,
}: {
  readonly placed: PlacedOpening;
  readonly piece: PieceOf<'parapet' | 'wall'>;
}) {
  const { from, to, near, far, low, high } = placed;
  const width = far - near;
  const along = times(minus(to, from), 1 / width);
  const right: Spot = [-along[1], along[0]];
  const half = piece.thicknessMetres / 2;
  const across = (by: number): string => polyline([plus(from, times(right, by)), plus(to, times(right, by))]);
  if (low > 0) return <path className="thin" d={across(-half) + across(half) + across(0)} />;
  const isUnderIt = high < piece.heightMetres;
  return (
    <>
      {isUnderIt && <path className="dashhair" d={across(-half) + across(half)} />}
      {piece.kind === 'wall' && (
        <path className="thin" d={swing(plus(from, times(right, half)), along, right, width)} />
      )}
    </>
  );
}

/** One leaf that opens to the right of the run, or two that meet in the middle. */
function swing(hinge: Spot, along: Spot, right: Spot, width: number): string {
  if (width <= WIDEST_LEAF) return leaf(hinge, along, right, width, 0);
  const other = plus(hinge, times(along, width));
  return leaf(hinge, along, right, width / 2, 0) + leaf(other, times(along, -1), right, width / 2, 1);
}

function leaf(hinge: Spot, along: Spot, right: Spot, width: number, sweep: 0 | 1): string {
  const open = plus(hinge, times(right, width));
  const latch = plus(hinge, times(along, width));
  return `${polyline([hinge, open])}A${width} ${width} 0 0 ${sweep} ${latch[0]} ${latch[1]}`;
}
