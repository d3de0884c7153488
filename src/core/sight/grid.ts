import { distort, goodRadius, undistort } from '../optics/distortion';
import type { Camera, FrameShape } from '../optics/types';
import { hypot } from '../units/steadyMath';

/** Pixels along the frame's longer side: what the numbers of the report are good for. */
const LONG_SIDE = 1024;

/** Positions are rounded to this fraction of a pixel, so that edge tests are exact whole-number arithmetic. */
export const SUBPIXELS = 256;

/**
 * Where in its pixels a column is sampled, in 1/256 from their tops: the bits of its number the other way round. Were
 * all columns sampled at the same height, a level edge, of which roofs are full, would fall on one side of all samples
 * of a row at once; half a row is a tenth of a per cent of a wide frame. This way any run of columns has its samples
 * at evenly spread heights.
 *
 * Source: [van-der-corput]
 */
export const SAMPLE_HEIGHTS = Uint8Array.from({ length: SUBPIXELS }, (_, column) => {
  let reversed = 0;
  for (let bit = 0; bit < 8; bit += 1) reversed |= ((column >> bit) & 1) << (7 - bit);
  return reversed;
});

/** Height of a column's samples within their pixels, 0..1. */
export const sampleHeight = (column: number): number =>
  (SAMPLE_HEIGHTS[column % SUBPIXELS] + 0.5) / SUBPIXELS;

/**
 * The raster behind a frame, column by column: pixel (x, y) is number x · height + y. For a lens that draws straight
 * lines straight it is the frame itself; for a distorting one it is a wider rectilinear field, and `weights` says how
 * many pixels of the delivered frame look at each of its pixels, so that counting with weights is counting in the
 * delivered frame.
 */
export interface Grid {
  readonly width: number;
  readonly height: number;
  /** Pixels per unit of tangent, and the pixel position of the axis. */
  readonly perTangentX: number;
  readonly perTangentY: number;
  readonly axisX: number;
  readonly axisY: number;
  readonly weights: Uint16Array;
  /** Whether each weight is one: a lens that draws straight lines straight. */
  readonly isEven: boolean;
  /** Pixels of the delivered frame. */
  readonly framePixels: number;
  /** From a place on this grid, in pixels, to 0..1 of the delivered frame. */
  readonly frameX: (x: number, y: number) => number;
  readonly frameY: (x: number, y: number) => number;
}

/** How far the grid's field reaches to each side, and up and down, as tangents. */
export const reachOf = (grid: Grid): { readonly tanX: number; readonly tanY: number } => ({
  tanX: grid.axisX / grid.perTangentX,
  tanY: grid.axisY / grid.perTangentY,
});

function deliveredSize(aspect: number, longSide: number): readonly [number, number] {
  return aspect >= 1
    ? [longSide, Math.max(1, Math.round(longSide / aspect))]
    : [Math.max(1, Math.round(longSide * aspect)), longSide];
}

/** The grid of a frame; `longSide` in pixels. */
export function gridOf(frame: FrameShape, longSide = LONG_SIDE): Grid {
  const [width, height] = deliveredSize(frame.aspect, longSide);
  const perTangentX = width / (2 * frame.tanHalfWidth);
  const perTangentY = height / (2 * frame.tanHalfHeight);
  if (frame.distortion) return overscanned(frame, frame.distortion, width, height, perTangentX, perTangentY);
  return {
    width,
    height,
    perTangentX,
    perTangentY,
    axisX: width / 2,
    axisY: height / 2,
    weights: new Uint16Array(width * height).fill(1),
    isEven: true,
    framePixels: width * height,
    frameX: (x) => x / width,
    frameY: (_, y) => y / height,
  };
}

/** Widest field, in half-frames, that a strongly barrelled lens may ask for. */
const WIDEST_OVERSCAN = 3;

function overscanned(
  frame: FrameShape,
  lens: NonNullable<FrameShape['distortion']>,
  frameWidth: number,
  frameHeight: number,
  perTangentX: number,
  perTangentY: number,
): Grid {
  const sources = new Float64Array(frameWidth * frameHeight * 2);
  let reachX = 0;
  let reachY = 0;
  for (let y = 0; y < frameHeight; y += 1) {
    for (let x = 0; x < frameWidth; x += 1) {
      const drawnX = (x + 0.5 - frameWidth / 2) / perTangentX;
      const drawnY = (y + sampleHeight(x) - frameHeight / 2) / perTangentY;
      const straight = undistort(lens, drawnX, drawnY);
      const at = (y * frameWidth + x) * 2;
      sources[at] = straight ? straight[0] : Number.NaN;
      sources[at + 1] = straight ? straight[1] : Number.NaN;
      if (!straight) continue;
      reachX = Math.max(reachX, Math.abs(straight[0]));
      reachY = Math.max(reachY, Math.abs(straight[1]));
    }
  }
  reachX = Math.min(reachX, frame.tanHalfWidth * WIDEST_OVERSCAN);
  reachY = Math.min(reachY, frame.tanHalfHeight * WIDEST_OVERSCAN);
  const width = 2 * Math.ceil(reachX * perTangentX + 1);
  const height = 2 * Math.ceil(reachY * perTangentY + 1);
  const weights = new Uint16Array(width * height);
  for (let at = 0; at < sources.length; at += 2) {
    const x = Math.floor(sources[at] * perTangentX + width / 2);
    const y = Math.round(sources[at + 1] * perTangentY + height / 2 - sampleHeight(Math.max(0, x)));
    if (x >= 0 && x < width && y >= 0 && y < height) weights[x * height + y] += 1;
  }
  const limit = goodRadius(lens);
  const drawn = (x: number, y: number, axis: 0 | 1): number => {
    const tangentX = (x - width / 2) / perTangentX;
    const tangentY = (y - height / 2) / perTangentY;
    const radius = hypot(tangentX, tangentY);
    const kept = radius > limit ? limit / radius : 1;
    return distort(lens, tangentX * kept, tangentY * kept)[axis];
  };
  return {
    width,
    height,
    perTangentX,
    perTangentY,
    axisX: width / 2,
    axisY: height / 2,
    weights,
    isEven: false,
    framePixels: frameWidth * frameHeight,
    frameX: (x, y) => 0.5 + drawn(x, y, 0) / (2 * frame.tanHalfWidth),
    frameY: (x, y) => 0.5 + drawn(x, y, 1) / (2 * frame.tanHalfHeight),
  };
}

/** Two frames of the same key have the same grid. */
export const frameKey = ({ tanHalfWidth, tanHalfHeight, aspect, distortion }: FrameShape): string =>
  [tanHalfWidth, tanHalfHeight, aspect, ...Object.values(distortion ?? {})].join(' ');

/**
 * The grid for another frame of the same delivery. Of a lens that draws straight lines straight only the scale differs;
 * the others' field is another size.
 */
export function gridAs(grid: Grid, { frame: from }: Camera, { frame: to }: Camera): Grid {
  if (frameKey(from) === frameKey(to)) return grid;
  if (to.distortion) return gridOf(to);
  return {
    ...grid,
    perTangentX: grid.width / (2 * to.tanHalfWidth),
    perTangentY: grid.height / (2 * to.tanHalfHeight),
  };
}
