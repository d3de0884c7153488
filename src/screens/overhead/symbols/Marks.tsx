import { dot } from '../geometry/paths';
import type { Spot } from '../geometry/spots';

/** Points that keep their size on the sheet whatever the scale: feet, posts, bulbs. */
export function Dots({ at, kind }: { readonly at: readonly Spot[]; readonly kind: string }) {
  return <path className={`dot ${kind}`} d={at.map(dot).join('')} />;
}

/** A ring that keeps its size on the sheet: a dot of ink with a dot of the ground in it. */
export function Ring({ at, kind }: { readonly at: readonly Spot[]; readonly kind: string }) {
  return (
    <>
      <Dots at={at} kind={`${kind} rim`} />
      <Dots at={at} kind={`${kind} heart`} />
    </>
  );
}
