import type { PlacedOpening } from '../../../core/form/pieces/making/openings';
import { uncut } from '../../../core/form/pieces/making/openings';
import { openingsOf } from '../../../core/form/pieces/openingsOf';
import { arcTo, bandPath, polyline } from '../geometry/paths';
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

/** A drawing cuts through what stands this far above its foot, metres, or lower where the run is low. */
const CUT_METRES = 1.1;
const CUT_SHARE = 0.6;

/** Whether the cut goes through an opening, and not over it or below it. */
const isCut = ({ low, high }: PlacedOpening, { heightMetres }: PieceOf<'parapet' | 'wall'>): boolean => {
  const cut = Math.min(CUT_METRES, heightMetres * CUT_SHARE);
  return low < cut && cut < high;
};

/** A parapet or a wall, cut: hatched between its two sides, broken where it is cut through an opening. */
export function Run({ piece }: { readonly piece: PieceOf<'parapet' | 'wall'> }) {
  const openings = openingsOf(piece);
  const cuts = openings.filter((placed) => isCut(placed, piece));
  const path = uncut(piece, cuts)
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
      {cuts.map((placed) => (
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
  return polyline([hinge, open]) + arcTo(width, sweep, latch);
}
