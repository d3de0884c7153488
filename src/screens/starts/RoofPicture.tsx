import { useMemo } from 'react';
import { footprintOf } from '../../core/form/fromAbove/footprint';
import type { Piece } from '../../core/plan/schema/pieces';
import type { Plan } from '../../core/plan/schema/plan';
import { polygon, polyline } from '../overhead/geometry/paths';
import { roofBounds } from '../overhead/geometry/roof';

const FAR = new Set<Piece['kind']>(['skyline block', 'deck']);
const AROUND_METRES = 1.5;

/** A plan's roof from above, small: decks, what stands on them, and the gear as dots. It says nothing by itself. */
export function RoofPicture({ plan }: { readonly plan: Plan }) {
  const [left, top, right, bottom] = useMemo(() => roofBounds(plan), [plan]);
  const [width, height] = [right - left + 2 * AROUND_METRES, bottom - top + 2 * AROUND_METRES];
  const decks = plan.pieces.flatMap((piece) => (piece.kind === 'deck' ? [piece] : []));
  const others = plan.pieces.filter(({ kind }) => !FAR.has(kind));
  return (
    <svg
      className="roof-picture"
      viewBox={`${left - AROUND_METRES} ${top - AROUND_METRES} ${width} ${height}`}
      aria-hidden="true"
    >
      {decks.length === 0 ? (
        <rect className="none-yet" x={left} y={top} width={right - left} height={bottom - top} />
      ) : null}
      {decks.map((deck) => (
        <path
          key={deck.id}
          className="deck"
          fillRule="evenodd"
          d={[deck.outline, ...(deck.holes ?? []).map(({ outline }) => outline)].map(polygon).join(' ')}
        />
      ))}
      {others.map((piece) => {
        const { outline, closed } = footprintOf({ section: 'piece', record: piece }, plan);
        return (
          <path
            key={piece.id}
            className={closed ? 'thing' : 'run'}
            d={closed ? polygon(outline) : polyline(outline)}
          />
        );
      })}
      {plan.gear.map((record) => {
        const { outline } = footprintOf({ section: 'gear', record }, plan);
        const [x, z] = outline[0] ?? [Number.NaN, Number.NaN];
        return Number.isFinite(x) && record.kind === 'stand' ? (
          <circle key={record.id} className="stand" cx={x} cy={z} r={0.25} />
        ) : null;
      })}
    </svg>
  );
}
