/** The bar of a level: how many stops to either side of the set stop, and its size in pixels. */
export const BAR = { mostStops: 6, perStop: 10, width: 132 } as const;

/** Where so many stops lie along the bar, pixels. */
export const tickAt = (stops: number): number => BAR.width / 2 + stops * BAR.perStop;

/** Where a level's bar ends; `beyond` says which end it runs past: −1, 0 or 1. */
export function barEnd(stops: number): { readonly x: number; readonly beyond: -1 | 0 | 1 } {
  const held = Math.min(BAR.mostStops, Math.max(-BAR.mostStops, stops));
  return { x: Math.round(tickAt(held) * 10) / 10, beyond: held === stops ? 0 : stops > 0 ? 1 : -1 };
}
