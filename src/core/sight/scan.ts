import type { PartShape } from '../form/types';
import { clipFace, clipping, MIRROR_GAP_METRES, MOST_CORNERS, NEAREST_METRES } from './clip';
import { facesOf } from './faces';
import { drawFace, drawTriangle, onScreen, type PixelRect, ring, type SpanSink } from './filling';
import { SUBPIXELS } from './grid';
import type { ScreenMatrix } from './screenFromWorld';

/** Only what lies on the positive side of this plane is drawn, in the part's own coordinates: n·p − offset > 0. */
export interface HalfSpace {
  readonly normal: readonly number[];
  readonly offset: number;
}

/** Which triangles to draw, by how their corners run on screen: outward faces seen directly, or in a mirror; or all. */
export type Facing = 'front' | 'mirrored front' | 'both';

/** Beyond this many pixels a corner is clipped: edge products then stay far below 2^53. */
const GUARD_PIXELS = 16384;

/** What is wrong with a corner: too near or too far off screen; not before a mirror; behind it. */
const OFF_SCREEN = 1;
const NOT_BEFORE = 2;
const BEHIND = 4;

/** Of the call of drawShape in hand; the corners of what is left of a clipped face stand behind those of the shape. */
let room = 0;
let homogeneousX = new Float64Array(0);
let homogeneousY = new Float64Array(0);
let depths = new Float64Array(0);
let sides = new Float64Array(0);
let outside = new Uint8Array(0);

function makeRoom(corners: number): void {
  if (corners <= room) return;
  room = Math.max(corners, 2 * room, 4096);
  const size = room + MOST_CORNERS;
  homogeneousX = new Float64Array(room);
  homogeneousY = new Float64Array(room);
  depths = new Float64Array(room);
  onScreen.x = new Float64Array(size);
  onScreen.y = new Float64Array(size);
  onScreen.nearness = new Float64Array(size);
  sides = new Float64Array(room);
  outside = new Uint8Array(room);
}

/** The scratch arrays above serve one call of drawShape at a time: nothing in it calls back into it. */
function transformCorners(shape: PartShape, m: ScreenMatrix, keep: HalfSpace | null): void {
  const { positions } = shape;
  const corners = positions.length / 3;
  makeRoom(corners);
  const { x: snappedX, y: snappedY, nearness: inverse } = onScreen;
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
 * Scan-converts a shape into a sink: the faces of the asked facing, pixels whose samples lie inside by the top-left
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
  onScreen.recede = recedePixels;
  // Screen y runs down: an outward face, counter-clockwise from outside, has negative area there.
  const wanted = facing === 'both' ? 0 : facing === 'front' ? -1 : 1;
  transformCorners(shape, m, keep);
  const { quadrangles, triangles } = facesOf(shape);
  for (let k = 0; k < quadrangles.length; k += 4) {
    for (let c = 0; c < 4; c += 1) ring[c] = quadrangles[k + c];
    drawRing(4, keep !== null, wanted, rect, sink);
  }
  for (let k = 0; k < triangles.length; k += 3) {
    for (let c = 0; c < 3; c += 1) ring[c] = triangles[k + c];
    drawRing(3, keep !== null, wanted, rect, sink);
  }
}

/** Draws the face of some first corners of the ring. */
function drawRing(count: number, bySide: boolean, wanted: number, rect: PixelRect, sink: SpanSink): void {
  let all = NOT_BEFORE;
  let any = 0;
  for (let k = 0; k < count; k += 1) {
    all &= outside[ring[k]];
    any |= outside[ring[k]];
  }
  // Nothing of it stands before the mirror.
  if (all !== 0) return;
  // A corner on the mirror's plane is its own image: left alone, an object and its image share that edge exactly.
  if ((any & (OFF_SCREEN | BEHIND)) !== 0) drawClipped(count, bySide, wanted, rect, sink);
  else if (count === 3) drawTriangle(ring[0], ring[1], ring[2], wanted, rect, sink);
  else drawFace(count, wanted, rect, sink);
}

/** Farther than this outside of a rectangle, pixels, rounding brings nothing into it. */
const ROUNDING_PIXELS = 1;

/** Whether `sign` times a coordinate is under a bound on screen at the ring's first corners, at all of them. */
function isPast(across: Float64Array, bound: number, sign: number, count: number): boolean {
  for (let k = 0; k < count; k += 1) {
    const corner = ring[k];
    if (!(sign * (across[corner] - bound * depths[corner]) < 0)) return false;
  }
  return true;
}

/** Whether all of a face lies behind the near plane, or beyond one side of the rectangle: clipped, it draws nothing. */
function isBeyond(count: number, { left, top, right, bottom }: PixelRect): boolean {
  let isBehind = true;
  for (let k = 0; k < count && isBehind; k += 1) isBehind = depths[ring[k]] < NEAREST_METRES;
  return (
    isBehind ||
    isPast(homogeneousX, left - ROUNDING_PIXELS, 1, count) ||
    isPast(homogeneousX, right + ROUNDING_PIXELS, -1, count) ||
    isPast(homogeneousY, top - ROUNDING_PIXELS, 1, count) ||
    isPast(homogeneousY, bottom + ROUNDING_PIXELS, -1, count)
  );
}

function drawClipped(count: number, bySide: boolean, wanted: number, rect: PixelRect, sink: SpanSink): void {
  if (isBeyond(count, rect)) return;
  const before = clipping.face;
  for (let k = 0; k < count; k += 1) {
    const corner = ring[k];
    before[4 * k] = homogeneousX[corner];
    before[4 * k + 1] = homogeneousY[corner];
    before[4 * k + 2] = depths[corner];
    before[4 * k + 3] = bySide ? sides[corner] : 1;
  }
  const left = clipFace(count, GUARD_PIXELS, bySide);
  if (left < 3) return;
  const { face } = clipping;
  const { x, y, nearness } = onScreen;
  for (let k = 0; k < left; k += 1) {
    const depth = face[k * 4 + 2];
    x[room + k] = Math.floor((face[k * 4] / depth) * SUBPIXELS + 0.5);
    y[room + k] = Math.floor((face[k * 4 + 1] / depth) * SUBPIXELS + 0.5);
    nearness[room + k] = 1 / depth;
    ring[k] = room + k;
  }
  drawFace(left, wanted, rect, sink);
}
