import { formatNumber, NBSP } from '../../../core/units/numbers';
import { formatStops } from '../../../core/units/stops';

/** The share of light that is so many stops from all of it; −1 stop is a half. */
export const shareOfStops = (stops: number): number => 2 ** stops;

/** Stops from all of it: 0 for all, −1 for a half, negative infinity for nothing. */
export const stopsOfShare = (share: number): number => Math.log2(share);

/** A share as stops below all of it: `−1.0 stop`, and `all dark` for nothing. */
export const stopsText = (share: number): string =>
  share > 0 ? formatStops(stopsOfShare(share)) : 'all dark';

/** What a lamp loses behind a layer of some openness, seen square on: `loses 0.3 stop`. */
export function lossText(openness: number): string {
  if (openness <= 0) return 'does not come through';
  const stops = -stopsOfShare(openness);
  if (stops < 0.05) return 'loses next to nothing';
  return `loses ${formatNumber(stops, 1)}${NBSP}${stops < 1.05 ? 'stop' : 'stops'}`;
}
