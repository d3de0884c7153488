import { memo } from 'react';
import { polygon, polyline } from '../geometry/paths';
import { type Deck, deckPath } from '../geometry/roof';
import { boundsOf, type Spot } from '../geometry/spots';

/** The roof's ground with its grid of metres, and its holes, each crossed out. */
export const DeckGround = memo(function DeckGround({ deck }: { readonly deck: Deck }) {
  const outline = deckPath(deck);
  const [left, top, right, bottom] = boundsOf(deck.outline) ?? [0, 0, 0, 0];
  // A grid finer than one line in five hundred would be a grey wash.
  const step = Math.max(1, Math.ceil(Math.max(right - left, bottom - top) / 500));
  let grid = '';
  for (let x = Math.ceil(left / step) * step; x <= right; x += step) grid += `M${x} ${top}V${bottom}`;
  for (let z = Math.ceil(top / step) * step; z <= bottom; z += step) grid += `M${left} ${z}H${right}`;
  const clip = `deck-${deck.id}`;
  return (
    <g>
      <clipPath id={clip}>
        <path clipRule="evenodd" d={outline} />
      </clipPath>
      <path className="deck-fill" fillRule="evenodd" d={outline} />
      <path className="grid" clipPath={`url(#${clip})`} d={grid} />
      {(deck.holes ?? []).map((hole) => (
        <Hole key={hole.id} clip={`${clip}-${hole.id}`} outline={hole.outline} />
      ))}
    </g>
  );
});

/** A hole as it is drafted: its edge, and the two diagonals of the box around it, as far as they lie in it. */
function Hole({ clip, outline }: { readonly clip: string; readonly outline: readonly Spot[] }) {
  const [left, top, right, bottom] = boundsOf(outline) ?? [0, 0, 0, 0];
  const edge = polygon(outline);
  return (
    <>
      <clipPath id={clip}>
        <path d={edge} />
      </clipPath>
      <path className="thin" d={edge} />
      <path
        className="hair"
        clipPath={`url(#${clip})`}
        d={
          polyline([
            [left, top],
            [right, bottom],
          ]) +
          polyline([
            [left, bottom],
            [right, top],
          ])
        }
      />
    </>
  );
}
