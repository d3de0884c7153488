import type { Flicker } from '../plan/schema/gear';
import { shareOf } from './build/seededHash';

/** How far into its slot a slot may begin, as a share of a slot: so that the changes keep no beat. */
const LATEST_START = 0.6;

/**
 * The share of its output that an uneven lamp gives at a moment, in [1 − depth, 1]: held for uneven slots,
 * `perSecond` of them a second on average, mostly near full with darker ones between, as a failing sign does.
 * The same seed and moment always give the same share. `seconds` is on the action's clock and may be negative.
 */
export function flickerShare({ seed, perSecond, depth }: Flicker, seconds: number): number {
  const slots = seconds * perSecond;
  const index = Math.floor(slots);
  const hasBegun = slots - index >= LATEST_START * shareOf(seed, index, 1);
  const dip = shareOf(seed, hasBegun ? index : index - 1, 2);
  return 1 - depth * dip * dip;
}
