import type { Footprint } from '../../core/form/fromAbove/footprint';
import { type Bounds, boundsOf, type Spot } from './geometry/spots';

const boundsKept = new WeakMap<Footprint, Bounds | null>();

/** The upright rectangle around a footprint in pixels of the pane; null where it has no outline. The sheet is never turned. */
export function boundsAt(footprint: Footprint, at: (spot: Spot) => Spot): Bounds | null {
  let bounds = boundsKept.get(footprint);
  if (bounds === undefined) {
    bounds = boundsOf(footprint.outline);
    boundsKept.set(footprint, bounds);
  }
  return bounds && [...at([bounds[0], bounds[1]]), ...at([bounds[2], bounds[3]])];
}
