import { memo } from 'react';
import { polygon } from '../geometry/paths';
import type { Deck } from '../geometry/roof';
import { boundsOf } from '../geometry/spots';

/** The roof's ground with its grid of metres. */
export const DeckGround = memo(function DeckGround({ deck }: { readonly deck: Deck }) {
  const outline = polygon(deck.outline);
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
        <path d={outline} />
      </clipPath>
      <path className="deck-fill" d={outline} />
      <path className="grid" clipPath={`url(#${clip})`} d={grid} />
    </g>
  );
});
