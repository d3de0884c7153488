import type { PartShape } from '../form/types';
import { clipTriangle, MIRROR_GAP_METRES, NEAREST_METRES } from './clip';
import type { ScreenMatrix } from './screenFromWorld';

/** Receives the pixels of a triangle, row by row: x0 ≤ x ≤ x1, the inverse depth at x0 and its step to the right. */
export interface SpanSink {
  span(row: number, x0: number, x1: number, inverseDepth: number, step: number): void;
}

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

/** Positions are rounded to this fraction of a pixel, so that edge tests are exact whole-number arithmetic. */
const SUBPIXELS = 256;
const HALF_PIXEL = SUBPIXELS / 2;
/** Beyond this many pixels a corner is clipped: edge products then stay far below 2^53. */
export const GUARD_PIXELS = 16384;

/** What is wrong with a corner: too near or too far off screen; not before a mirror; behind it. */
const OFF_SCREEN = 1;
const NOT_BEFORE = 2;
const BEHIND = 4;

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
  homogeneousX = new Float64Array(room);
  homogeneousY = new Float64Array(room);
  depths = new Float64Array(room);
  snappedX = new Float64Array(room);
  snappedY = new Float64Array(room);
  inverse = new Float64Array(room);
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
 * Scan-converts a shape into a sink: the triangles of the asked facing, pixels whose centres lie inside by the top-left
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
      drawTriangle(
        snappedX[a],
        snappedY[a],
        inverse[a],
        snappedX[b],
        snappedY[b],
        inverse[b],
        snappedX[c],
        snappedY[c],
        inverse[c],
        wanted,
        rect,
        sink,
      );
    } else {
      drawClipped(a, b, c, keep !== null, wanted, rect, sink);
    }
  }
}

const corner = new Float64Array(12);

function drawClipped(
  a: number,
  b: number,
  c: number,
  bySide: boolean,
  wanted: number,
  rect: PixelRect,
  sink: SpanSink,
): void {
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
  const x = (k: number) => Math.floor((polygon[k * 4] / polygon[k * 4 + 2]) * SUBPIXELS + 0.5);
  const y = (k: number) => Math.floor((polygon[k * 4 + 1] / polygon[k * 4 + 2]) * SUBPIXELS + 0.5);
  const near = (k: number) => 1 / polygon[k * 4 + 2];
  for (let k = 1; k + 1 < count; k += 1) {
    drawTriangle(
      x(0),
      y(0),
      near(0),
      x(k),
      y(k),
      near(k),
      x(k + 1),
      y(k + 1),
      near(k + 1),
      wanted,
      rect,
      sink,
    );
  }
}

/** 0 for a top or left edge, whose pixels belong to the triangle, else 1 (y down, corners clockwise on screen). */
const edgeBias = (dx: number, dy: number): number => (dy < 0 || (dy === 0 && dx > 0) ? 0 : 1);

function drawTriangle(
  ax: number,
  ay: number,
  az: number,
  bx: number,
  by: number,
  bz: number,
  cx: number,
  cy: number,
  cz: number,
  wanted: number,
  rect: PixelRect,
  sink: SpanSink,
): void {
  const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  if (area === 0 || area * wanted < 0) return;
  if (area < 0) {
    drawTriangle(ax, ay, az, cx, cy, cz, bx, by, bz, 0, rect, sink);
    return;
  }
  const lowY = Math.min(ay, by, cy);
  const highY = Math.max(ay, by, cy);
  const lowX = Math.min(ax, bx, cx);
  const highX = Math.max(ax, bx, cx);
  const top = Math.max(rect.top, Math.ceil((lowY - HALF_PIXEL) / SUBPIXELS));
  const bottom = Math.min(rect.bottom - 1, Math.floor((highY - HALF_PIXEL) / SUBPIXELS));
  const left = Math.max(rect.left, Math.ceil((lowX - HALF_PIXEL) / SUBPIXELS));
  const right = Math.min(rect.right - 1, Math.floor((highX - HALF_PIXEL) / SUBPIXELS));
  if (top > bottom || left > right) return;

  // Edge functions, ≥ 0 inside, as values at (left, top) and whole-number steps per pixel.
  const px = left * SUBPIXELS + HALF_PIXEL;
  const py = top * SUBPIXELS + HALF_PIXEL;
  const abX = bx - ax,
    abY = by - ay,
    bcX = cx - bx,
    bcY = cy - by,
    caX = ax - cx,
    caY = ay - cy;
  let e0 = abX * (py - ay) - abY * (px - ax) - edgeBias(abX, abY);
  let e1 = bcX * (py - by) - bcY * (px - bx) - edgeBias(bcX, bcY);
  let e2 = caX * (py - cy) - caY * (px - cx) - edgeBias(caX, caY);
  const s0 = -abY * SUBPIXELS,
    s1 = -bcY * SUBPIXELS,
    s2 = -caY * SUBPIXELS;
  const r0 = abX * SUBPIXELS,
    r1 = bcX * SUBPIXELS,
    r2 = caX * SUBPIXELS;

  const acX = cx - ax,
    acY = cy - ay;
  const stepX = (((bz - az) * acY - (cz - az) * abY) / area) * SUBPIXELS;
  const stepY = (((cz - az) * abX - (bz - az) * acX) / area) * SUBPIXELS;
  let start =
    az + ((px - ax) * stepX + (py - ay) * stepY) / SUBPIXELS - recede * (Math.abs(stepX) + Math.abs(stepY));

  const widest = right - left;
  for (let row = top; row <= bottom; row += 1) {
    // The pixels of this row where all three edge functions are ≥ 0, by solving each for x.
    let x0 = 0;
    let x1 = widest;
    if (s0 > 0) {
      if (e0 < 0) x0 = Math.max(x0, Math.ceil(-e0 / s0));
    } else if (s0 < 0) x1 = e0 < 0 ? -1 : Math.min(x1, Math.floor(e0 / -s0));
    else if (e0 < 0) x1 = -1;
    if (s1 > 0) {
      if (e1 < 0) x0 = Math.max(x0, Math.ceil(-e1 / s1));
    } else if (s1 < 0) x1 = e1 < 0 ? -1 : Math.min(x1, Math.floor(e1 / -s1));
    else if (e1 < 0) x1 = -1;
    if (s2 > 0) {
      if (e2 < 0) x0 = Math.max(x0, Math.ceil(-e2 / s2));
    } else if (s2 < 0) x1 = e2 < 0 ? -1 : Math.min(x1, Math.floor(e2 / -s2));
    else if (e2 < 0) x1 = -1;
    if (x0 <= x1) sink.span(row, left + x0, left + x1, start + x0 * stepX, stepX);
    e0 += r0;
    e1 += r1;
    e2 += r2;
    start += stepY;
  }
}
