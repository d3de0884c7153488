import { dotFrom } from '../form/build/vector';
import type { ItemForm } from '../form/types';
import { undistort } from '../optics/distortion';
import type { Camera, FrameShape } from '../optics/types';
import { hypot } from '../units/steadyMath';
import { NEAREST_METRES } from './clip';
import { cornersOf } from './corners';
import { cornersBefore, type SightStage, type StagePart } from './stage';

/** How far outside the frame line something is; see `Margin` in the report for the words. */
export interface Outside {
  readonly metres: number;
  readonly frameWidths: number;
  readonly edge: 'left' | 'right' | 'top' | 'bottom';
}

/** [x right, y up, z forward] three numbers a corner, in camera coordinates, metres. */
type Polygon = number[];

/** Half-width and half-height of the pyramid as tangents, along the axes of the picture; a lens's bending undone. */
function pyramidOf(frame: FrameShape): { readonly tanX: number; readonly tanY: number } {
  const { tanHalfWidth, tanHalfHeight, distortion } = frame;
  if (!distortion) return { tanX: tanHalfWidth, tanY: tanHalfHeight };
  const right = undistort(distortion, tanHalfWidth, 0);
  const below = undistort(distortion, 0, tanHalfHeight);
  return { tanX: right ? right[0] : tanHalfWidth, tanY: below ? below[1] : tanHalfHeight };
}

/** Places along each side of the frame that are asked how far out the lens looks there. */
const PLACES_ON_SIDE = 16;

/**
 * Half-width and half-height, as tangents, of the upright rectangle around all that the frame takes in. The corners of
 * a barrel reach farther out than the middles of its sides.
 */
export function aroundFrame(frame: FrameShape): { readonly tanX: number; readonly tanY: number } {
  const { tanHalfWidth, tanHalfHeight, distortion } = frame;
  if (!distortion) return { tanX: tanHalfWidth, tanY: tanHalfHeight };
  let { tanX, tanY } = pyramidOf(frame);
  for (let k = 0; k <= PLACES_ON_SIDE; k += 1) {
    const share = (2 * k) / PLACES_ON_SIDE - 1;
    for (const [x, y] of [
      [share, 1],
      [share, -1],
      [1, share],
      [-1, share],
    ]) {
      const way = undistort(distortion, x * tanHalfWidth, y * tanHalfHeight);
      if (!way) continue;
      tanX = Math.max(tanX, Math.abs(way[0]));
      tanY = Math.max(tanY, Math.abs(way[1]));
    }
  }
  return { tanX, tanY };
}

const NOTHING: Polygon = [];

/** The part of a polygon where a·x + b·y + c·z ≥ bound: itself where that is all of it. Nobody changes what comes back. */
function kept(polygon: Polygon, a: number, b: number, c: number, bound: number): Polygon {
  let corners = 0;
  for (let k = 0; k < polygon.length; k += 3)
    if (a * polygon[k] + b * polygon[k + 1] + c * polygon[k + 2] - bound >= 0) corners += 3;
  if (corners === polygon.length) return polygon;
  if (corners === 0) return NOTHING;
  const result: Polygon = [];
  for (let k = 0; k < polygon.length; k += 3) {
    const n = (k + 3) % polygon.length;
    const here = a * polygon[k] + b * polygon[k + 1] + c * polygon[k + 2] - bound;
    const there = a * polygon[n] + b * polygon[n + 1] + c * polygon[n + 2] - bound;
    if (here >= 0) result.push(polygon[k], polygon[k + 1], polygon[k + 2]);
    if (here >= 0 !== there >= 0) {
      const share = here / (here - there);
      for (let axis = 0; axis < 3; axis += 1) {
        result.push(polygon[k + axis] + (polygon[n + axis] - polygon[k + axis]) * share);
      }
    }
  }
  return result;
}

/** Corners in camera coordinates, used anew by every part. */
let corners = new Float64Array(3 * 256);
/** The triangle that is visited, used anew by each: nobody keeps it. */
const visited: Polygon = [0, 0, 0, 0, 0, 0, 0, 0, 0];
/** It alone, as pieces to be split. */
const whole: Polygon[] = [visited];

/**
 * Calls back with each triangle of a part in camera coordinates, cut at the near plane, but for those whose three
 * corners are all `beyond` in one and the same of some ways, one bit each; until one answers true. `beyond` is told
 * where a corner is among `corners`.
 */
function eachTriangle(
  part: StagePart,
  camera: Camera,
  visit: (triangle: Polygon) => boolean,
  beyond: ((at: number) => number) | null = null,
): boolean {
  const { positions, indices } = part.shape;
  if (corners.length < positions.length) corners = new Float64Array(2 * positions.length);
  cornersBefore(part, camera.pose, corners);
  for (let k = 0; k < indices.length; k += 3) {
    const a = 3 * indices[k];
    const b = 3 * indices[k + 1];
    const c = 3 * indices[k + 2];
    if (beyond) {
      const both = beyond(a) & beyond(b);
      if (both !== 0 && (both & beyond(c)) !== 0) continue;
    }
    for (let axis = 0; axis < 3; axis += 1) {
      visited[axis] = corners[a + axis];
      visited[3 + axis] = corners[b + axis];
      visited[6 + axis] = corners[c + axis];
    }
    const isNear = visited[2] < NEAREST_METRES || visited[5] < NEAREST_METRES || visited[8] < NEAREST_METRES;
    const triangle = isNear ? kept(visited, 0, 0, 1, NEAREST_METRES) : visited;
    if (triangle.length >= 9 && visit(triangle)) return true;
  }
  return false;
}

/** Least length of a point on the stretch from (u0, v0) to (u1, v1), seen from the origin. */
function leastLength(u0: number, v0: number, u1: number, v1: number): number {
  const du = u1 - u0;
  const dv = v1 - v0;
  const square = du * du + dv * dv;
  const share = square > 0 ? Math.min(1, Math.max(0, -(u0 * du + v0 * dv) / square)) : 0;
  return hypot(u0 + du * share, v0 + dv * share);
}

interface Least {
  metres: number;
  widths: number;
  edge: Outside['edge'];
}

/** Takes one piece that lies in one of the nine regions around the pyramid; true when that region is its inside. */
function measure(piece: Polygon, tanX: number, tanY: number, least: Least): boolean {
  let middleX = 0;
  let middleY = 0;
  let middleZ = 0;
  for (let k = 0; k < piece.length; k += 3) {
    middleX += piece[k];
    middleY += piece[k + 1];
    middleZ += piece[k + 2];
  }
  const side = middleX > tanX * middleZ ? 1 : middleX < -tanX * middleZ ? -1 : 0;
  const level = middleY > tanY * middleZ ? 1 : middleY < -tanY * middleZ ? -1 : 0;
  if (side === 0 && level === 0) return true;
  for (let k = 0; k < piece.length; k += 3) {
    const n = (k + 3) % piece.length;
    const z0 = piece[k + 2];
    const z1 = piece[n + 2];
    const u0 = side === 0 ? 0 : Math.max(0, side * piece[k] - tanX * z0);
    const u1 = side === 0 ? 0 : Math.max(0, side * piece[n] - tanX * z1);
    const v0 = level === 0 ? 0 : Math.max(0, level * piece[k + 1] - tanY * z0);
    const v1 = level === 0 ? 0 : Math.max(0, level * piece[n + 1] - tanY * z1);
    const metres = leastLength(u0, v0, u1, v1);
    if (metres < least.metres) {
      least.metres = metres;
      const vertical = side === 0 || (level !== 0 && Math.min(v0, v1) > Math.min(u0, u1));
      least.edge = vertical ? (level > 0 ? 'top' : 'bottom') : side > 0 ? 'right' : 'left';
    }
    least.widths = Math.min(least.widths, leastLength(u0 / z0, v0 / z0, u1 / z1, v1 / z1) / (2 * tanX));
  }
  return false;
}

/** The pieces of some polygons on both sides of the plane a·x + b·y + c·z = 0; the same where it cuts none. */
function splitAt(pieces: Polygon[], a: number, b: number, c: number): Polygon[] {
  let split: Polygon[] | null = null;
  for (let k = 0; k < pieces.length; k += 1) {
    const piece = pieces[k];
    let low = 0;
    let high = 0;
    for (let at = 0; at < piece.length; at += 3) {
      const value = a * piece[at] + b * piece[at + 1] + c * piece[at + 2];
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    if (low >= 0 || high <= 0) {
      split?.push(piece);
      continue;
    }
    split ??= pieces.slice(0, k);
    const inner = kept(piece, a, b, c, 0);
    const outer = kept(piece, -a, -b, -c, 0);
    if (inner.length >= 9) split.push(inner);
    if (outer.length >= 9) split.push(outer);
  }
  return split ?? pieces;
}

/** Splits a triangle at the four planes of the pyramid and measures the pieces; true when any of it is inside. */
function measureTriangle(triangle: Polygon, tanX: number, tanY: number, least: Least): boolean {
  whole[0] = triangle;
  let pieces = splitAt(whole, 1, 0, tanX);
  pieces = splitAt(pieces, -1, 0, tanX);
  pieces = splitAt(pieces, 0, 1, tanY);
  pieces = splitAt(pieces, 0, -1, tanY);
  let inside = false;
  for (const piece of pieces) inside = measure(piece, tanX, tanY, least) || inside;
  return inside;
}

/**
 * The sides of the pyramid, one bit each, beyond which a corner lies so far out that nothing has to be measured; none
 * for one that the near plane cuts off.
 */
function sidesBeyond(at: number, tanX: number, tanY: number, { metres, widths }: Least): number {
  const x = corners[at];
  const y = corners[at + 1];
  const z = corners[at + 2];
  if (z < NEAREST_METRES) return 0;
  const far = Math.max(metres, widths * 2 * tanX * z);
  const reachX = tanX * z;
  const reachY = tanY * z;
  return (
    (x - reachX >= far ? 1 : 0) |
    (-x - reachX >= far ? 2 : 0) |
    (y - reachY >= far ? 4 : 0) |
    (-y - reachY >= far ? 8 : 0)
  );
}

/** Corners are worked out in other steps than what they hold: less than this, metres. */
const ROUNDING_METRES = 1e-9;

/** A lower bound of how far outside a part is, from the corners of its box. */
function boundOf(
  part: StagePart,
  { pose }: Camera,
  tanX: number,
  tanY: number,
): { metres: number; widths: number } {
  const { position: p, right: r, up: u, forward: f } = pose;
  // What lies beyond a side of the pyramid by so much at all corners does so everywhere between them.
  let [toRight, toLeft, above, below, farthest] = [Infinity, Infinity, Infinity, Infinity, -Infinity];
  for (const corner of cornersOf(part)) {
    const x = dotFrom(p, corner, r);
    const y = dotFrom(p, corner, u);
    const z = dotFrom(p, corner, f);
    toRight = Math.min(toRight, x - z * tanX);
    toLeft = Math.min(toLeft, -x - z * tanX);
    above = Math.min(above, y - z * tanY);
    below = Math.min(below, -y - z * tanY);
    farthest = Math.max(farthest, z);
  }
  if (farthest < NEAREST_METRES) return { metres: Infinity, widths: Infinity };
  const sideways = Math.max(0, Math.max(toRight, toLeft) - ROUNDING_METRES);
  const upright = Math.max(0, Math.max(above, below) - ROUNDING_METRES);
  const metres = hypot(sideways, upright);
  return { metres, widths: metres / farthest / (2 * tanX) };
}

/** At least so far outside the frame an item is, metres, by the boxes around its parts; Infinity behind the camera. */
export function leastOutside({ parts, firstPart }: SightStage, item: number, camera: Camera): number {
  const { tanX, tanY } = pyramidOf(camera.frame);
  let least = Infinity;
  for (let index = firstPart[item]; index < firstPart[item + 1]; index += 1)
    least = Math.min(least, boundOf(parts[index], camera, tanX, tanY).metres);
  return least;
}

/** Answers by form and camera. While one stand is dragged, nothing else of a roof changes, nor do the cameras. */
type Memory<Answer> = WeakMap<ItemForm, Map<string, Answer>>;
const OUTSIDES: Memory<Outside | 'inside' | null> = new WeakMap();
const MOVES_OUT: Memory<number> = new WeakMap();
const MOST_CAMERAS = 64;

/** What a camera is told from others by, worked out once: each item of a roof is asked before it. */
const KEYS = new WeakMap<Camera, string>();

function keyOf(camera: Camera): string {
  const known = KEYS.get(camera);
  if (known !== undefined) return known;
  const { position, forward, up } = camera.pose;
  const { tanHalfWidth, tanHalfHeight, distortion } = camera.frame;
  const bending = Object.values(distortion ?? {});
  const key = [...position, ...forward, ...up, tanHalfWidth, tanHalfHeight, ...bending].join(' ');
  KEYS.set(camera, key);
  return key;
}

function remembered<Answer>(
  memory: Memory<Answer>,
  form: ItemForm,
  camera: Camera,
  work: () => Answer,
): Answer {
  const key = keyOf(camera);
  let answers = memory.get(form);
  if (!answers) {
    answers = new Map();
    memory.set(form, answers);
  }
  const known = answers.get(key);
  if (known !== undefined) return known;
  if (answers.size >= MOST_CAMERAS) answers.clear();
  const answer = work();
  answers.set(key, answer);
  return answer;
}

/**
 * How far an item is outside the frame line: the least move square to the camera's axis, sideways or up or down, that
 * would bring any point of it to the frame line, in metres; and the least distance in the picture, in frame widths.
 * The two may come from different points. `inside` when any of it is inside; null when all of it is behind the camera.
 * For a distorting lens the frame line is taken as the rectangle through its four middles.
 */
export function outsideOf(stage: SightStage, item: number, camera: Camera): Outside | 'inside' | null {
  return remembered(OUTSIDES, stage.forms[item], camera, () => measureOutside(stage, item, camera));
}

function measureOutside(stage: SightStage, item: number, camera: Camera): Outside | 'inside' | null {
  const { tanX, tanY } = pyramidOf(camera.frame);
  const least: Least = { metres: Infinity, widths: Infinity, edge: 'right' };
  const parts = stage.parts
    .slice(stage.firstPart[item], stage.firstPart[item + 1])
    .map((part) => ({ part, bound: boundOf(part, camera, tanX, tanY) }))
    .sort((a, b) => a.bound.metres - b.bound.metres);
  for (const { part, bound } of parts) {
    if (bound.metres >= least.metres && bound.widths >= least.widths) continue;
    const inside = eachTriangle(
      part,
      camera,
      (triangle) => measureTriangle(triangle, tanX, tanY, least),
      (at) => sidesBeyond(at, tanX, tanY, least),
    );
    if (inside) return 'inside';
  }
  if (least.metres === Infinity) return null;
  return { metres: least.metres, frameWidths: least.widths, edge: least.edge };
}

/**
 * Whether an item is inside a camera's frame or nearer to it than either of two distances, as `outsideOf` measures
 * them; for those who ask thousands of cameras.
 */
export function isNearer(
  stage: SightStage,
  item: number,
  camera: Camera,
  { metres, frameWidths }: Pick<Outside, 'metres' | 'frameWidths'>,
): boolean {
  const { tanX, tanY } = pyramidOf(camera.frame);
  const least: Least = { metres, widths: frameWidths, edge: 'right' };
  for (let index = stage.firstPart[item]; index < stage.firstPart[item + 1]; index += 1) {
    const part = stage.parts[index];
    const bound = boundOf(part, camera, tanX, tanY);
    if (bound.metres >= metres && bound.widths >= frameWidths) continue;
    const isFound = eachTriangle(
      part,
      camera,
      (triangle) =>
        measureTriangle(triangle, tanX, tanY, least) || least.metres < metres || least.widths < frameWidths,
      (at) => sidesBeyond(at, tanX, tanY, least),
    );
    if (isFound) return true;
  }
  return false;
}

/**
 * The least move along the frame's width that takes all of an item out of the frame, metres, positive towards frame
 * right. Only what lies between the frame's top and bottom counts. 0 when nothing of it does. For a distorting lens the
 * frame is taken as the upright rectangle around it, so that the move may be longer than it has to be, never too short.
 */
export function moveOutOf(stage: SightStage, item: number, camera: Camera): number {
  return remembered(MOVES_OUT, stage.forms[item], camera, () => measureMoveOut(stage, item, camera));
}

function measureMoveOut(stage: SightStage, item: number, camera: Camera): number {
  const { tanX, tanY } = aroundFrame(camera.frame);
  let toRight = 0;
  let toLeft = 0;
  for (const part of stage.parts.slice(stage.firstPart[item], stage.firstPart[item + 1])) {
    eachTriangle(part, camera, (triangle) => {
      const band = kept(kept(triangle, 0, 1, tanY, 0), 0, -1, tanY, 0);
      for (let k = 0; k < band.length; k += 3) {
        toRight = Math.max(toRight, tanX * band[k + 2] - band[k]);
        toLeft = Math.max(toLeft, band[k] + tanX * band[k + 2]);
      }
      return false;
    });
  }
  return toRight <= toLeft ? toRight : -toLeft;
}
