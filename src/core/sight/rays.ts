import type { Vec3 } from '../form/build/vector';
import type { PartShape } from '../form/types';
import { filledBy } from './closed';
import type { SightStage, StagePart } from './stage';
import { RUN_TRIANGLES, triangleRuns } from './triangleRuns';

/** A ray: where it starts and a direction of any length; distances along it are in lengths of that direction. */
export interface Ray {
  readonly origin: Vec3;
  readonly direction: Vec3;
}

/** Nearer than this share of the way counts as the same place: a ray does not hide behind its own target. */
const SAME_PLACE = 1e-7;

/** The ray in hand in a part's own coordinates: where it starts, and its direction; see {@link findMeetings}. */
const own = new Float64Array(6);

/** Brings a ray into a part's own coordinates; the motion is rigid, so distances stay. */
function bringInto({ worldFromPart: m }: StagePart, { origin, direction }: Ray): void {
  if (!m) {
    for (let axis = 0; axis < 3; axis += 1) {
      own[axis] = origin[axis];
      own[axis + 3] = direction[axis];
    }
    return;
  }
  const x = origin[0] - m[3];
  const y = origin[1] - m[7];
  const z = origin[2] - m[11];
  for (let axis = 0; axis < 3; axis += 1) {
    own[axis] = m[axis] * x + m[axis + 4] * y + m[axis + 8] * z;
    own[axis + 3] = m[axis] * direction[0] + m[axis + 4] * direction[1] + m[axis + 8] * direction[2];
  }
}

/** Whether the ray's line comes within the part's ball. */
function passesBall({ centre, radius }: StagePart, { origin, direction }: Ray): boolean {
  const x = centre[0] - origin[0];
  const y = centre[1] - origin[1];
  const z = centre[2] - origin[2];
  const along = x * direction[0] + y * direction[1] + z * direction[2];
  const size = direction[0] * direction[0] + direction[1] * direction[1] + direction[2] * direction[2];
  const away = x * x + y * y + z * z - (along * along) / size;
  const reach = radius * (1 + 1e-9) + 1e-9;
  return away <= reach * reach;
}

/** Whether the ray in hand passes the part's box before `until`; the box is grown by a hair. */
function passesBox({ shape }: StagePart, until: number): boolean {
  const { low, high } = filledBy(shape);
  let from = 0;
  let to = until;
  for (let axis = 0; axis < 3; axis += 1) {
    const start = low[axis] - 1e-6 - own[axis];
    const end = high[axis] + 1e-6 - own[axis];
    const way = own[axis + 3];
    if (way === 0) {
      if (start > 0 || end < 0) return false;
      continue;
    }
    const a = start / way;
    const b = end / way;
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
    if (from > to) return false;
  }
  return true;
}

/** Distances of the meetings that were found last, in no order; as many as have been needed at once. */
let distances = new Float64Array(64);

/**
 * Where the ray first meets a part, as a share of its direction; Infinity when it does not. Both faces count.
 * The triangle test is Möller and Trumbore's.
 *
 * Source: [ray-triangle]
 */
export function meets(part: StagePart, ray: Ray): number {
  const count = findMeetings(part, ray, Infinity, Infinity);
  let nearest = Infinity;
  for (let k = 0; k < count; k += 1) nearest = Math.min(nearest, distances[k]);
  return nearest;
}

/** Whether the ray meets a part before `until`, a share of its direction. */
export const meetsBefore = (part: StagePart, ray: Ray, until: number): boolean =>
  findMeetings(part, ray, until, 1) > 0;

/** How often the ray crosses a part's surface. */
export const meetings = (part: StagePart, ray: Ray): number => findMeetings(part, ray, Infinity, Infinity);

/** How many porous layers of a part the ray crosses before a share of its direction; the seam of two triangles is one. */
export function layersCrossed(part: StagePart, ray: Ray, until: number): number {
  const count = findMeetings(part, ray, until, Infinity);
  const met: number[] = [];
  for (const distance of distances.subarray(0, count))
    if (!met.some((known) => Math.abs(known - distance) <= SAME_PLACE * distance)) met.push(distance);
  return met.length;
}

/** Finds meetings before `until`, in no order, into `distances`: how many there are, or as many as are `enough`. */
function findMeetings(part: StagePart, ray: Ray, until: number, enough: number): number {
  if (!passesBall(part, ray)) return 0;
  bringInto(part, ray);
  if (!passesBox(part, until)) return 0;
  const boxes = triangleRuns(part.shape);
  const { indices } = part.shape;
  const corners = RUN_TRIANGLES * 3;
  let count = 0;
  for (let run = 0; run * corners < indices.length; run += 1) {
    if (boxes.length > 6 && !passesRun(boxes, run * 6, until)) continue;
    const last = Math.min(indices.length, (run + 1) * corners);
    count = addMeetings(part.shape, run * corners, last, until, count);
    if (count >= enough) return enough;
  }
  return count;
}

/** Whether the ray in hand passes the box of a run of triangles before `until`. */
function passesRun(boxes: Float64Array, at: number, until: number): boolean {
  let from = 0;
  let to = until;
  for (let axis = 0; axis < 3; axis += 1) {
    const low = boxes[at + axis] - own[axis];
    const high = boxes[at + axis + 3] - own[axis];
    const way = own[axis + 3];
    if (way === 0) {
      if (low > 0 || high < 0) return false;
      continue;
    }
    from = Math.max(from, (way > 0 ? low : high) / way);
    to = Math.min(to, (way > 0 ? high : low) / way);
    if (from > to) return false;
  }
  return true;
}

/** Adds the meetings of the ray in hand with the triangles of indices `first` to `last` to `count` others. */
function addMeetings(
  { positions, indices }: PartShape,
  first: number,
  last: number,
  until: number,
  count: number,
): number {
  const ox = own[0];
  const oy = own[1];
  const oz = own[2];
  const dx = own[3];
  const dy = own[4];
  const dz = own[5];
  let met = count;
  for (let k = first; k < last; k += 3) {
    const a = indices[k] * 3;
    const b = indices[k + 1] * 3;
    const c = indices[k + 2] * 3;
    const ax = positions[a];
    const ay = positions[a + 1];
    const az = positions[a + 2];
    const ux = positions[b] - ax;
    const uy = positions[b + 1] - ay;
    const uz = positions[b + 2] - az;
    const vx = positions[c] - ax;
    const vy = positions[c + 1] - ay;
    const vz = positions[c + 2] - az;
    const px = dy * vz - dz * vy;
    const py = dz * vx - dx * vz;
    const pz = dx * vy - dy * vx;
    const determinant = ux * px + uy * py + uz * pz;
    if (determinant === 0) continue;
    const tx = ox - ax;
    const ty = oy - ay;
    const tz = oz - az;
    const along = (tx * px + ty * py + tz * pz) / determinant;
    if (along < 0 || along > 1) continue;
    const qx = ty * uz - tz * uy;
    const qy = tz * ux - tx * uz;
    const qz = tx * uy - ty * ux;
    const second = (dx * qx + dy * qy + dz * qz) / determinant;
    if (second < 0 || along + second > 1) continue;
    const distance = (vx * qx + vy * qy + vz * qz) / determinant;
    if (!(distance > 0 && distance < until)) continue;
    if (met === distances.length) {
      const more = new Float64Array(2 * met);
      more.set(distances);
      distances = more;
    }
    distances[met] = distance;
    met += 1;
  }
  return met;
}

/** The balls around a stage's solids, five numbers each: the part's number, its middle, its radius. */
const SOLIDS = new WeakMap<SightStage, Float64Array>();

function solidsOf(stage: SightStage): Float64Array {
  const known = SOLIDS.get(stage);
  if (known) return known;
  const { parts } = stage;
  let count = 0;
  for (const { shape } of parts) if (shape.openness === null) count += 1;
  const balls = new Float64Array(count * 5);
  let k = 0;
  for (const { index, centre, radius, shape } of parts) {
    if (shape.openness !== null) continue;
    balls[k] = index;
    balls[k + 1] = centre[0];
    balls[k + 2] = centre[1];
    balls[k + 3] = centre[2];
    balls[k + 4] = radius * (1 + 1e-9) + 1e-9;
    k += 5;
  }
  SOLIDS.set(stage, balls);
  return balls;
}

/**
 * Whether a solid other than `target` stands in the ray's way before `distance`. `likely` are tried first: a good
 * guess saves asking everything else.
 */
function isBlocked(
  stage: SightStage,
  ray: Ray,
  distance: number,
  target: StagePart,
  ignore: StagePart | null,
  likely: readonly StagePart[],
): boolean {
  const until = distance * (1 - SAME_PLACE);
  if (isBlockedByOne(likely, ray, until, target, ignore)) return true;
  const balls = solidsOf(stage);
  const { origin, direction } = ray;
  const ox = origin[0];
  const oy = origin[1];
  const oz = origin[2];
  const dx = direction[0];
  const dy = direction[1];
  const dz = direction[2];
  const size = dx * dx + dy * dy + dz * dz;
  const length = Math.sqrt(size);
  for (let k = 0; k < balls.length; k += 5) {
    const x = balls[k + 1] - ox;
    const y = balls[k + 2] - oy;
    const z = balls[k + 3] - oz;
    const radius = balls[k + 4];
    const far = x * dx + y * dy + z * dz;
    // Behind the origin, beyond the distance, or to the side of the line by more than the ball's radius.
    if (far < -radius * length || far > until * size + radius * length) continue;
    if ((x * x + y * y + z * z) * size - far * far > radius * radius * size) continue;
    const part = stage.parts[balls[k]];
    if (part !== target && part !== ignore && meetsBefore(part, ray, until)) return true;
  }
  return false;
}

/** Whether one of some parts, a solid, stands in the ray's way before `until`. */
function isBlockedByOne(
  parts: readonly StagePart[],
  ray: Ray,
  until: number,
  target: StagePart,
  ignore: StagePart | null,
): boolean {
  for (const part of parts)
    if (part.shape.openness === null && part !== target && part !== ignore && meetsBefore(part, ray, until))
      return true;
  return false;
}

/**
 * Whether the part is the first solid (or a porous layer before any solid) that the ray meets. `likely` to be in its way
 * are tried first; those that are so nearer than `least`, where no place of the part is, before the part itself.
 */
export function showsAlong(
  stage: SightStage,
  ray: Ray,
  target: StagePart,
  ignore: StagePart | null,
  likely: readonly StagePart[],
  least = 0,
): boolean {
  if (least > 0 && isBlockedByOne(likely, ray, least, target, ignore)) return false;
  const distance = meets(target, ray);
  return distance < Infinity && !isBlocked(stage, ray, distance, target, ignore, likely);
}
