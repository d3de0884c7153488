import type { Extent } from '../../core/report/types';

/** A rectangle in the picture area, CSS pixels. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The delivered frame in a picture area that shows `lookAround` times as much along each side. */
export function frameIn(width: number, height: number, lookAround: number): Box {
  const rest = (1 - 1 / lookAround) / 2;
  return {
    left: width * rest,
    top: height * rest,
    width: width / lookAround,
    height: height / lookAround,
  };
}

/** A rectangle in 0..1 of the frame, [left, top, right, bottom], as one of the picture, to the fraction of a pixel. */
export const rectIn = (frame: Box, [left, top, right, bottom]: Extent): Box => ({
  left: frame.left + left * frame.width,
  top: frame.top + top * frame.height,
  width: (right - left) * frame.width,
  height: (bottom - top) * frame.height,
});

/** A smaller mark could not be seen. */
const SMALLEST_PIXELS = 6;

/** An extent of the frame as a rectangle of the picture, never under six pixels. */
export function boxOf(frame: Box, [left, top, right, bottom]: Extent): Box {
  const x = frame.left + ((left + right) / 2) * frame.width;
  const y = frame.top + ((top + bottom) / 2) * frame.height;
  const width = Math.max((right - left) * frame.width, SMALLEST_PIXELS);
  const height = Math.max((bottom - top) * frame.height, SMALLEST_PIXELS);
  return { left: x - width / 2, top: y - height / 2, width, height };
}

/** Whether two rectangles share any area. */
export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.left + b.width &&
  b.left < a.left + a.width &&
  a.top < b.top + b.height &&
  b.top < a.top + a.height;
