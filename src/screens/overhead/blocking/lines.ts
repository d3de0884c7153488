import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import type { Lines } from '../../../desk/blocking/lines';
import { segmentWithin } from '../geometry/clipping';
import { type Bounds, minus, type Spot } from '../geometry/spots';

/** What the lettering of the blocking is made from, beside the plan as it is seen. */
export interface BlockingLettering {
  readonly lines: Lines;
  /** The master and the setup that is cheated for; null where the master is seen. */
  readonly cheating: { readonly master: Plan; readonly setup: Setup } | null;
}

/** Long enough to leave any roof, metres. */
const FAR = 1000;

/** The straight line through two places as far as it lies within a rectangle; null where it does not. */
export function throughBoth(
  [one, other]: readonly [Spot, Spot],
  within: Bounds,
): readonly [Spot, Spot] | null {
  const [x, z] = minus(other, one);
  const size = Math.hypot(x, z) || 1;
  const at = (metres: number): Spot => [one[0] + (x / size) * metres, one[1] + (z / size) * metres];
  return segmentWithin(at(-FAR), at(FAR), within);
}
