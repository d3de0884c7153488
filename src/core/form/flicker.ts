import type { Flicker } from '../plan/schema/gear';

/** How far into its slot a slot may begin, as a share of a slot: so that the changes keep no beat. */
const LATEST_START = 0.6;

/** A number in [0, 1) that two whole numbers always give alike: a small mixing hash on 32 bits. */
function scatter(seed: number, index: number): number {
  let mixed = Math.imul(seed | 0, 0x9e3779b1) ^ Math.imul(index | 0, 0x85ebca77);
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
  return ((mixed ^ (mixed >>> 15)) >>> 0) / 0x100000000;
}

/**
 * The share of its output that an uneven lamp gives at a moment, in [1 − depth, 1]: held for uneven slots,
 * `perSecond` of them a second on average, mostly near full with darker ones between, as a failing sign does.
 * The same seed and moment always give the same share. `seconds` is on the action's clock and may be negative.
 */
export function flickerShare({ seed, perSecond, depth }: Flicker, seconds: number): number {
  const slots = seconds * perSecond;
  const index = Math.floor(slots);
  const hasBegun = slots - index >= LATEST_START * scatter(seed + 1, index);
  const dip = scatter(seed, hasBegun ? index : index - 1);
  return 1 - depth * dip * dip;
}
