import { Fragment } from 'react';
import { breakingPieces } from './breakingAddresses';
import { keysOf } from './keysOf';

/** Words whose addresses go on in the next line after a sign, and never in the middle of a word. */
export function BreakingAddresses({ words }: { readonly words: string }) {
  const pieces = breakingPieces(words);
  const keys = keysOf(pieces);
  return pieces.map((piece, place) => (
    <Fragment key={keys[place]}>
      {piece}
      <wbr />
    </Fragment>
  ));
}
