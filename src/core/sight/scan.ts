import type { PartShape } from '../form/types';
import { clipTriangle, MIRROR_GAP_METRES, NEAREST_METRES } from './clip';
import { SAMPLE_HEIGHTS, SUBPIXELS } from './grid';
import type { ScreenMatrix } from './screenFromWorld';

/** Receives the pixels of a triangle, column by column: y0 ≤ y ≤ y1, as near as `run` says. */
export interface SpanSink {
  span(column: number, y0: number, y1: number): void;
}

/**
 * Of the span in hand: the inverse depth at y0, and its step downwards. Not arguments, since each number with a fraction
 * that is handed to a function that is not inlined is an allocation, and there are millions.
 */
export const run = new Float64Array(2);

/** A rectangle of pixels, right and bottom outside. */
export interface PixelRect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Only what lies on the positive side of this plane is drawn, in the part's own coordinates: n·p − offset > 0. */
export interface HalfSpace {
  readonly normal: readonly number[];
  readonly offset: number;
}

/** Which triangles to draw, by how their corners run on screen: outward faces seen directly, or in a mirror; or all. */
export type Facing = 'front' | 'mirrored front' | 'both';

const HALF_PIXEL = SUBPIXELS / 2;
/** Beyond this many pixels a corner is clipped: edge products then stay far below 2^53. */
const GUARD_PIXELS = 16384;

/** What is wrong with a corner: too near or too far off screen; not before a mirror; behind it. */
const OFF_SCREEN = 1;
const NOT_BEFORE = 2;
const BEHIND = 4;

/** What is left of a triangle that is clipped has at most so many corners; they stand behind those of the shape. */
const CLIPPED_CORNERS = 12;

/** Of the call of drawShape in hand, see there. */
let recede = 0;
let room = 0;
let homogeneousX = new Float64Array(0);
let homogeneousY = new Float64Array(0);
let depths = new Float64Array(0);
let snappedX = new Float64Array(0);
let snappedY = new Float64Array(0);
let inverse = new Float64Array(0);
let sides = new Float64Array(0);
let outside = new Uint8Array(0);

function makeRoom(corners: number): void {
  if (corners <= room) return;
  room = Math.max(corners, 2 * room, 4096);
  const size = room + CLIPPED_CORNERS;
  homogeneousX = new Float64Array(room);
  homogeneousY = new Float64Array(room);
  depths = new Float64Array(room);
  snappedX = new Float64Array(size);
  snappedY = new Float64Array(size);
  inverse = new Float64Array(size);
  sides = new Float64Array(room);
  outside = new Uint8Array(room);
}

/** The scratch arrays above serve one call of drawShape at a time: nothing in it calls back into it. */
function transformCorners(shape: PartShape, m: ScreenMatrix, keep: HalfSpace | null): void {
  const { positions } = shape;
  const corners = positions.length / 3;
  makeRoom(corners);
  for (let k = 0, p = 0; k < corners; k += 1, p += 3) {
    const x = positions[p];
    const y = positions[p + 1];
    const z = positions[p + 2];
    const w = m[8] * x + m[9] * y + m[10] * z + m[11];
    const hx = m[0] * x + m[1] * y + m[2] * z + m[3];
    const hy = m[4] * x + m[5] * y + m[6] * z + m[7];
    homogeneousX[k] = hx;
    homogeneousY[k] = hy;
    depths[k] = w;
    let flag = 0;
    if (keep) {
      const side = keep.normal[0] * x + keep.normal[1] * y + keep.normal[2] * z - keep.offset;
      sides[k] = side;
      flag = side <= MIRROR_GAP_METRES ? (side < -MIRROR_GAP_METRES ? NOT_BEFORE | BEHIND : NOT_BEFORE) : 0;
    }
    const guard = GUARD_PIXELS * w;
    if (w < NEAREST_METRES || hx < -guard || hx > guard || hy < -guard || hy > guard) {
      outside[k] = flag | OFF_SCREEN;
      continue;
    }
    outside[k] = flag;
    const nearness = 1 / w;
    inverse[k] = nearness;
    snappedX[k] = Math.floor(hx * nearness * SUBPIXELS + 0.5);
    snappedY[k] = Math.floor(hy * nearness * SUBPIXELS + 0.5);
  }
}

/**
 * Scan-converts a shape into a sink: the triangles of the asked facing, pixels whose samples lie inside by the top-left
 * rule, corners rounded to 1/256 pixel. `m` is screen from part. `recedePixels` sets the surface back by what it
 * would be farther away that much of a pixel off.
 */
export function drawShape(
  shape: PartShape,
  m: ScreenMatrix,
  rect: PixelRect,
  keep: HalfSpace | null,
  facing: Facing,
  sink: SpanSink,
  recedePixels = 0,
): void {
  recede = recedePixels;
  // Screen y runs down: an outward face, counter-clockwise from outside, has negative area there.
  const wanted = facing === 'both' ? 0 : facing === 'front' ? -1 : 1;
  transformCorners(shape, m, keep);
  const { indices } = shape;
  for (let k = 0; k < indices.length; k += 3) {
    const a = indices[k];
    const b = indices[k + 1];
    const c = indices[k + 2];
    // Nothing of it stands before the mirror.
    if ((outside[a] & outside[b] & outside[c] & NOT_BEFORE) !== 0) continue;
    // A corner on the mirror's plane is its own image: left alone, an object and its image share that edge exactly.
    if (((outside[a] | outside[b] | outside[c]) & (OFF_SCREEN | BEHIND)) === 0) {
      drawTriangle(a, b, c, wanted, rect, sink);
    } else {
      drawClipped(a, b, c, keep !== null, wanted, rect, sink);
    }
  }
}

const corner = new Float64Array(12);

/** Farther than this outside of a rectangle, pixels, rounding brings nothing into it. */
const ROUNDING_PIXELS = 1;

/** Whether all of a triangle lies behind the near plane, or beyond one side of the rectangle: clipped, it draws nothing. */
function isBeyond(a: number, b: number, c: number, { left, top, right, bottom }: PixelRect): boolean {
  if (depths[a] < NEAREST_METRES && depths[b] < NEAREST_METRES && depths[c] < NEAREST_METRES) return true;
  const isPast = (across: Float64Array, bound: number, sign: number): boolean =>
    sign * (across[a] - bound * depths[a]) < 0 &&
    sign * (across[b] - bound * depths[b]) < 0 &&
    sign * (across[c] - bound * depths[c]) < 0;
  return (
    isPast(homogeneousX, left - ROUNDING_PIXELS, 1) ||
    isPast(homogeneousX, right + ROUNDING_PIXELS, -1) ||
    isPast(homogeneousY, top - ROUNDING_PIXELS, 1) ||
    isPast(homogeneousY, bottom + ROUNDING_PIXELS, -1)
  );
}

function drawClipped(
  a: number,
  b: number,
  c: number,
  bySide: boolean,
  wanted: number,
  rect: PixelRect,
  sink: SpanSink,
): void {
  if (isBeyond(a, b, c, rect)) return;
  let at = 0;
  for (const k of [a, b, c]) {
    corner[at] = homogeneousX[k];
    corner[at + 1] = homogeneousY[k];
    corner[at + 2] = depths[k];
    corner[at + 3] = bySide ? sides[k] : 1;
    at += 4;
  }
  const polygon = clipTriangle(corner, GUARD_PIXELS, bySide);
  const count = polygon.length / 4;
  if (count < 3) return;
  for (let k = 0; k < count; k += 1) {
    const nearness = 1 / polygon[k * 4 + 2];
    snappedX[room + k] = Math.floor((polygon[k * 4] / polygon[k * 4 + 2]) * SUBPIXELS + 0.5);
    snappedY[room + k] = Math.floor((polygon[k * 4 + 1] / polygon[k * 4 + 2]) * SUBPIXELS + 0.5);
    inverse[room + k] = nearness;
  }
  for (let k = 1; k + 1 < count; k += 1) drawTriangle(room, room + k, room + k + 1, wanted, rect, sink);
}

/** 0 for a top or left edge, whose pixels belong to the triangle, else 1 (y down, corners clockwise on screen). */
const edgeBias = (dx: number, dy: number): number => (dy < 0 || (dy === 0 && dx > 0) ? 0 : 1);

/** First of the samples 0 … `last` of a column where an edge function that grows downwards is ≥ 0; `last` + 1 for none. */
function firstInside(value: number, down: number, last: number): number {
  if (value >= 0) return 0;
  if (-value > last * down) return last + 1;
  const exact = -value / down;
  const whole = exact | 0;
  return whole < exact ? whole + 1 : whole;
}

/** Last of the samples 0 … `last` of a column where an edge function that falls by `up` downwards is ≥ 0; −1 for none. */
function lastInside(value: number, up: number, last: number): number {
  if (value < 0) return -1;
  return value >= last * up ? last : (value / up) | 0;
}

/** Draws a triangle of the asked facing, its corners by their numbers on screen. */
function drawTriangle(
  a: number,
  second: number,
  third: number,
  wanted: number,
  rect: PixelRect,
  sink: SpanSink,
): void {
  const ax = snappedX[a];
  const ay = snappedY[a];
  const across = (snappedX[second] - ax) * (snappedY[third] - ay);
  const doubled = across - (snappedY[second] - ay) * (snappedX[third] - ax);
  if (doubled === 0 || doubled * wanted < 0) return;
  // Clockwise on screen, where the edge functions are positive inside.
  const b = doubled > 0 ? second : third;
  const c = doubled > 0 ? third : second;
  const area = Math.abs(doubled);
  const az = inverse[a];
  const bx = snappedX[b];
  const by = snappedY[b];
  const bz = inverse[b];
  const cx = snappedX[c];
  const cy = snappedY[c];
  const cz = inverse[c];
  const lowY = Math.min(ay, by, cy);
  const highY = Math.max(ay, by, cy);
  const lowX = Math.min(ax, bx, cx);
  const highX = Math.max(ax, bx, cx);
  // Samples lie anywhere in a pixel's height, and in the middle of its width.
  const top = Math.max(rect.top, Math.floor(lowY / SUBPIXELS)) | 0;
  const bottom = Math.min(rect.bottom - 1, Math.floor(highY / SUBPIXELS)) | 0;
  const left = Math.max(rect.left, Math.ceil((lowX - HALF_PIXEL) / SUBPIXELS)) | 0;
  const right = Math.min(rect.right - 1, Math.floor((highX - HALF_PIXEL) / SUBPIXELS)) | 0;
  if (top > bottom || left > right) return;

  // Edge functions, ≥ 0 inside, at the top of the first pixel; whole-number steps per pixel down and to the right.
  const px = left * SUBPIXELS + HALF_PIXEL;
  const py = top * SUBPIXELS;
  const abX = bx - ax;
  const abY = by - ay;
  const bcX = cx - bx;
  const bcY = cy - by;
  const caX = ax - cx;
  const caY = ay - cy;
  let e0 = abX * (py - ay) - abY * (px - ax) - edgeBias(abX, abY);
  let e1 = bcX * (py - by) - bcY * (px - bx) - edgeBias(bcX, bcY);
  let e2 = caX * (py - cy) - caY * (px - cx) - edgeBias(caX, caY);
  const down0 = abX * SUBPIXELS;
  const down1 = bcX * SUBPIXELS;
  const down2 = caX * SUBPIXELS;
  const right0 = -abY * SUBPIXELS;
  const right1 = -bcY * SUBPIXELS;
  const right2 = -caY * SUBPIXELS;

  const acX = cx - ax;
  const acY = cy - ay;
  const stepX = (((bz - az) * acY - (cz - az) * abY) / area) * SUBPIXELS;
  const stepY = (((cz - az) * abX - (bz - az) * acX) / area) * SUBPIXELS;
  let start =
    az + ((px - ax) * stepX + (py - ay) * stepY) / SUBPIXELS - recede * (Math.abs(stepX) + Math.abs(stepY));

  const tallest = bottom - top;
  for (let column = left; column <= right; column += 1) {
    // The samples of this column where all three edge functions are ≥ 0, by solving each for y.
    const height = SAMPLE_HEIGHTS[column % SUBPIXELS];
    const f0 = e0 + abX * height;
    const f1 = e1 + bcX * height;
    const f2 = e2 + caX * height;
    let y0 = 0;
    let y1 = tallest;
    if (down0 > 0) y0 = firstInside(f0, down0, y1);
    else if (down0 < 0) y1 = lastInside(f0, -down0, y1);
    else if (f0 < 0) y1 = -1;
    if (y0 <= y1) {
      if (down1 > 0) y0 = Math.max(y0, firstInside(f1, down1, y1));
      else if (down1 < 0) y1 = lastInside(f1, -down1, y1);
      else if (f1 < 0) y1 = -1;
      if (y0 <= y1) {
        if (down2 > 0) y0 = Math.max(y0, firstInside(f2, down2, y1));
        else if (down2 < 0) y1 = lastInside(f2, -down2, y1);
        else if (f2 < 0) y1 = -1;
        if (y0 <= y1) {
          run[0] = start + (y0 + height / SUBPIXELS) * stepY;
          run[1] = stepY;
          sink.span(column, top + y0, top + y1);
        }
      }
    }
    e0 += right0;
    e1 += right1;
    e2 += right2;
    start += stepX;
  }
}
