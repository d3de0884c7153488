import { formatStops } from '../../../core/units/stops';

/** The share of light that is so many stops from all of it; −1 stop is a half. */
export const shareOfStops = (stops: number): number => 2 ** stops;

/** Stops from all of it: 0 for all, −1 for a half, negative infinity for nothing. */
export const stopsOfShare = (share: number): number => Math.log2(share);

/** A share as stops below all of it: `−1.0 stop`, and `all dark` for nothing. */
export const stopsText = (share: number): string =>
  share > 0 ? formatStops(stopsOfShare(share)) : 'all dark';

/** How much light a layer of some openness takes, seen square on: `loses 0.3 stop`. */
export function lossText(openness: number): string {
  if (openness <= 0) return 'lets nothing through';
  const stops = -stopsOfShare(openness);
  return stops < 0.05 ? 'takes hardly any light' : `takes ${formatStops(stops).replace('+', '')}`;
}
