import { MOST_CORNERS } from './clip';
import { SAMPLE_HEIGHTS, SUBPIXELS } from './grid';

/** Receives the pixels of a face, column by column: y0 ≤ y ≤ y1, as near as `run` says. */
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

/**
 * The corners on screen of what is being drawn: their places, whole numbers of 1/256 pixel, and inverse depths. `recede`
 * sets the surface back by what it would be farther away that much of a pixel off.
 */
export const onScreen = {
  x: new Float64Array(0),
  y: new Float64Array(0),
  nearness: new Float64Array(0),
  recede: 0,
};

/** The corners of the face to be drawn, by their numbers on screen, in order around it. */
export const ring = new Int32Array(MOST_CORNERS);

const HALF_PIXEL = SUBPIXELS / 2;

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

/**
 * Draws a triangle, its corners by their numbers on screen, into a sink: the pixels whose samples lie inside by the
 * top-left rule. `wanted`: the sign of its doubled area where only one facing is, else 0.
 */
export function drawTriangle(
  a: number,
  second: number,
  third: number,
  wanted: number,
  rect: PixelRect,
  sink: SpanSink,
): void {
  const { x: snappedX, y: snappedY, nearness: inverse, recede } = onScreen;
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

/** The corners of a face clockwise on screen. */
const clockwiseX = new Float64Array(MOST_CORNERS);
const clockwiseY = new Float64Array(MOST_CORNERS);

/** The sign of the turns at all corners of the ring, by its first `count`; 0 where they are not all alike. */
function turnOf(count: number): number {
  const { x, y } = onScreen;
  let from = ring[count - 2];
  let at = ring[count - 1];
  let sign = 0;
  for (let k = 0; k < count; k += 1) {
    const to = ring[k];
    const turn = (x[at] - x[from]) * (y[to] - y[at]) - (y[at] - y[from]) * (x[to] - x[at]);
    if (turn === 0 || turn * sign < 0) return 0;
    sign = turn > 0 ? 1 : -1;
    from = at;
    at = to;
  }
  return sign;
}

/** Whether the first `count` corners of the ring go round once: to the right in one piece, and not again. */
function goesRoundOnce(count: number): boolean {
  const { x } = onScreen;
  let pieces = 0;
  let wasRight = x[ring[0]] > x[ring[count - 1]];
  for (let k = 0; k < count; k += 1) {
    const isRight = x[ring[k + 1 === count ? 0 : k + 1]] > x[ring[k]];
    if (isRight && !wasRight) pieces += 1;
    wasRight = isRight;
  }
  return pieces === 1;
}

/** Draws the face that the first `count` corners of the ring bound as triangles around its first corner. */
function drawFan(count: number, wanted: number, rect: PixelRect, sink: SpanSink): void {
  for (let k = 1; k + 1 < count; k += 1) drawTriangle(ring[0], ring[k], ring[k + 1], wanted, rect, sink);
}

/**
 * Draws the flat face that the first `count` corners of the ring bound: the same pixels as its triangles around the first
 * corner, with one stretch a column, found from the two edges that bound it there. A face whose corners, rounded, no
 * longer turn all one way is drawn as those triangles. `wanted` as for {@link drawTriangle}.
 */
export function drawFace(count: number, wanted: number, rect: PixelRect, sink: SpanSink): void {
  if (count < 4) {
    drawFan(count, wanted, rect, sink);
    return;
  }
  const { x, y, nearness, recede } = onScreen;
  let lowX = Infinity;
  let highX = -Infinity;
  let lowY = Infinity;
  let highY = -Infinity;
  for (let k = 0; k < count; k += 1) {
    const corner = ring[k];
    lowX = Math.min(lowX, x[corner]);
    highX = Math.max(highX, x[corner]);
    lowY = Math.min(lowY, y[corner]);
    highY = Math.max(highY, y[corner]);
  }
  const top = Math.max(rect.top, Math.floor(lowY / SUBPIXELS)) | 0;
  const bottom = Math.min(rect.bottom - 1, Math.floor(highY / SUBPIXELS)) | 0;
  const left = Math.max(rect.left, Math.ceil((lowX - HALF_PIXEL) / SUBPIXELS)) | 0;
  // At its last corner it has no width: by the top-left rule nothing lies there.
  const right = Math.min(rect.right - 1, Math.floor((highX - HALF_PIXEL - 1) / SUBPIXELS)) | 0;
  if (top > bottom || left > right) return;

  const turn = turnOf(count);
  if (turn === 0 || (count > 4 && !goesRoundOnce(count))) {
    drawFan(count, wanted, rect, sink);
    return;
  }
  if (turn * wanted < 0) return;
  for (let k = 0; k < count; k += 1) {
    const corner = ring[turn > 0 ? k : count - 1 - k];
    clockwiseX[k] = x[corner];
    clockwiseY[k] = y[corner];
  }

  // The plane of inverse depth, from the largest of the triangles around the first corner.
  const a = ring[0];
  const ax = x[a];
  const ay = y[a];
  const az = nearness[a];
  let area = 0;
  let stepX = 0;
  let stepY = 0;
  for (let k = 1; k + 1 < count; k += 1) {
    const b = ring[k];
    const c = ring[k + 1];
    const abX = x[b] - ax;
    const abY = y[b] - ay;
    const acX = x[c] - ax;
    const acY = y[c] - ay;
    const doubled = abX * acY - abY * acX;
    if (doubled * turn <= area) continue;
    area = doubled * turn;
    const ab = nearness[b] - az;
    const ac = nearness[c] - az;
    stepX = ((ab * acY - ac * abY) / doubled) * SUBPIXELS;
    stepY = ((ac * abX - ab * acX) / doubled) * SUBPIXELS;
  }
  const py = top * SUBPIXELS;
  let px = left * SUBPIXELS + HALF_PIXEL;
  let start =
    az + ((px - ax) * stepX + (py - ay) * stepY) / SUBPIXELS - recede * (Math.abs(stepX) + Math.abs(stepY));

  const last = count - 1;
  const tallest = bottom - top;
  let column = left;
  while (column <= right) {
    // The edges above and below; at a corner the one after it, which is never the less strict.
    let above = 0;
    while (above < last && !(clockwiseX[above] <= px && px < clockwiseX[above + 1])) above += 1;
    let below = 0;
    while (below < last && !(clockwiseX[below + 1] <= px && px < clockwiseX[below])) below += 1;
    const afterAbove = above === last ? 0 : above + 1;
    const afterBelow = below === last ? 0 : below + 1;
    const bound = Math.min(clockwiseX[afterAbove], clockwiseX[below]);
    const end = Math.max(column, Math.min(right, Math.floor((bound - HALF_PIXEL - 1) / SUBPIXELS))) | 0;
    const aboveX = clockwiseX[afterAbove] - clockwiseX[above];
    const aboveY = clockwiseY[afterAbove] - clockwiseY[above];
    const belowX = clockwiseX[afterBelow] - clockwiseX[below];
    const belowY = clockwiseY[afterBelow] - clockwiseY[below];
    let e0 = aboveX * (py - clockwiseY[above]) - aboveY * (px - clockwiseX[above]) - edgeBias(aboveX, aboveY);
    let e1 = belowX * (py - clockwiseY[below]) - belowY * (px - clockwiseX[below]) - edgeBias(belowX, belowY);
    const down = aboveX * SUBPIXELS;
    const up = -belowX * SUBPIXELS;
    for (; column <= end; column += 1) {
      const height = SAMPLE_HEIGHTS[column % SUBPIXELS];
      const y1 = lastInside(e1 + belowX * height, up, tallest);
      const y0 = firstInside(e0 + aboveX * height, down, tallest);
      if (y0 <= y1) {
        run[0] = start + (y0 + height / SUBPIXELS) * stepY;
        run[1] = stepY;
        sink.span(column, top + y0, top + y1);
      }
      e0 -= aboveY * SUBPIXELS;
      e1 -= belowY * SUBPIXELS;
      start += stepX;
      px += SUBPIXELS;
    }
  }
}
