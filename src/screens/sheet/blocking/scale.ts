/** Clear of the first and the last moment, pixels. */
export const PAD = 12;
/** Right of the last moment, for the lettering that begins there. */
export const PAD_AFTER = 32;
/** How near the scale goes: a frame is ten pixels. */
const NEAREST = 240;
/** However long the action is, the drawing grows no wider, pixels. */
const WIDEST = 240_000;
/** An action of less than this is drawn as long, seconds. */
const SHORTEST_SECONDS = 1;
/** Of the ruler: at least so far apart, pixels. */
const TICKS_APART = 64;
const EVERY = [1 / 24, 0.25, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300, 600];

/** How the clock lies along the timeline. */
export interface Scale {
  readonly pixelsPerSecond: number;
  /** The last moment that is drawn, seconds. */
  readonly until: number;
}

/** The scale at which all of the action fits into a width. */
export const fitted = (until: number, width: number): number =>
  Math.max(0.05, (width - PAD - PAD_AFTER) / Math.max(until, SHORTEST_SECONDS));

/** A scale within what can be drawn: not smaller than all of it, not nearer than a frame at ten pixels. */
export function withinReach(pixelsPerSecond: number, until: number, width: number): number {
  const nearest = Math.min(NEAREST, WIDEST / Math.max(until, SHORTEST_SECONDS));
  const least = fitted(until, width);
  return Math.max(least, Math.min(Math.max(nearest, least), pixelsPerSecond));
}

export const xOf = ({ pixelsPerSecond }: Scale, seconds: number): number => PAD + seconds * pixelsPerSecond;
export const secondsAt = ({ pixelsPerSecond }: Scale, x: number): number => (x - PAD) / pixelsPerSecond;
export const widthOf = (scale: Scale): number => xOf(scale, scale.until) + PAD_AFTER;

/** How far to scroll so that a moment stays under the same pixel when the scale changes. */
export const scrollFor = (scale: Scale, seconds: number, underPixel: number): number =>
  Math.max(0, xOf(scale, seconds) - underPixel);

/** The numbers of the ruler, with how many decimals they need, and the small ticks between them. */
export function rulerOf(scale: Scale): {
  readonly every: number;
  readonly decimals: number;
  readonly smallEvery: number;
} {
  const every = EVERY.find((step) => step * scale.pixelsPerSecond >= TICKS_APART) ?? 1800;
  const at = EVERY.indexOf(every);
  const smallEvery = EVERY.find(
    (step, k) => k < at && isPart(step, every) && step * scale.pixelsPerSecond >= 8,
  );
  return { every, decimals: every < 0.25 ? 2 : every < 1 ? 2 : 0, smallEvery: smallEvery ?? every };
}

const isPart = (step: number, of: number): boolean => Math.abs(of / step - Math.round(of / step)) < 1e-9;

/** Moments from the start on, one each so many seconds, between two pixels. */
export function momentsBetween(scale: Scale, every: number, left: number, right: number): readonly number[] {
  const first = Math.max(0, Math.floor(secondsAt(scale, left) / every));
  const last = Math.min(Math.floor(scale.until / every + 1e-9), Math.ceil(secondsAt(scale, right) / every));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => (first + k) * every);
}
