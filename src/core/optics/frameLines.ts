/** A rectangle in 0..1 of the delivered frame: [left, top, right, bottom]. */
export type FrameRect = readonly [number, number, number, number];

const centred = (shareOfWidth: number, shareOfHeight: number): FrameRect => [
  0.5 - shareOfWidth / 2,
  0.5 - shareOfHeight / 2,
  0.5 + shareOfWidth / 2,
  0.5 + shareOfHeight / 2,
];

/** Above this a delivery counts as wide; the older, tighter areas are for 4:3. */
const WIDE_FROM = 1.5;

/**
 * Safe action and safe title areas: 93 % and 90 % of the picture's width and height for wide deliveries,
 * 90 % and 80 % for 4:3 ones.
 *
 * Source: [safe-areas]
 */
export function safeAreas(aspect: number): { readonly action: FrameRect; readonly title: FrameRect } {
  return aspect >= WIDE_FROM
    ? { action: centred(0.93, 0.93), title: centred(0.9, 0.9) }
    : { action: centred(0.9, 0.9), title: centred(0.8, 0.8) };
}

/** The lines at one and two thirds of width and height, and the points where they cross. */
export const THIRDS = { lines: [1 / 3, 2 / 3] } as const;

/**
 * A second delivery inside the first, both centred, as a rectangle of the first: the largest of that aspect that fits.
 */
export function deliveryWithin(outerAspect: number, innerAspect: number): FrameRect {
  return innerAspect <= outerAspect
    ? centred(innerAspect / outerAspect, 1)
    : centred(1, outerAspect / innerAspect);
}
