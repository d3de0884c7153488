import type { Vec3 } from '../form/build/vector';
import type { PartShape } from '../form/types';
import { filledBy } from './closed';
import { placeIn, type SightStage, type StagePart, turnedInto } from './stage';
import { RUN_TRIANGLES, triangleRuns } from './triangleRuns';

/** A ray: where it starts and a direction of any length; distances along it are in lengths of that direction. */
export interface Ray {
  readonly origin: Vec3;
  readonly direction: Vec3;
}

/** Nearer than this share of the way counts as the same place: a ray does not hide behind its own target. */
const SAME_PLACE = 1e-7;

/** The ray in a part's own coordinates; the motion is rigid, so distances stay. */
const intoPart = (part: StagePart, { origin, direction }: Ray): Ray => ({
  origin: placeIn(part, origin),
  direction: turnedInto(part, direction),
});

/** Whether the ray's line comes within the part's ball. */
function passesBall(part: StagePart, { origin, direction }: Ray): boolean {
  const [cx, cy, cz] = part.centre;
  const x = cx - origin[0];
  const y = cy - origin[1];
  const z = cz - origin[2];
  const along = x * direction[0] + y * direction[1] + z * direction[2];
  const size = direction[0] * direction[0] + direction[1] * direction[1] + direction[2] * direction[2];
  const away = x * x + y * y + z * z - (along * along) / size;
  const reach = part.radius * (1 + 1e-9) + 1e-9;
  return away <= reach * reach;
}

/** Whether a ray in the part's own coordinates passes the part's box before `until`; the box is grown by a hair. */
function passesBox(part: StagePart, { origin, direction }: Ray, until: number): boolean {
  const { low, high } = filledBy(part.shape);
  let from = 0;
  let to = until;
  for (let axis = 0; axis < 3; axis += 1) {
    const start = low[axis] - 1e-6 - origin[axis];
    const end = high[axis] + 1e-6 - origin[axis];
    if (direction[axis] === 0) {
      if (start > 0 || end < 0) return false;
      continue;
    }
    const a = start / direction[axis];
    const b = end / direction[axis];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
    if (from > to) return false;
  }
  return true;
}

/**
 * Where the ray first meets a part, as a share of its direction; Infinity when it does not. Both faces count.
 * The triangle test is Möller and Trumbore's.
 *
 * Source: [ray-triangle]
 */
export function meets(part: StagePart, ray: Ray): number {
  let nearest = Infinity;
  eachMeeting(part, ray, Infinity, (distance) => {
    if (distance < nearest) nearest = distance;
    return false;
  });
  return nearest;
}

/** Whether the ray meets a part before `until`, a share of its direction. */
export function meetsBefore(part: StagePart, ray: Ray, until: number): boolean {
  let met = false;
  eachMeeting(part, ray, until, () => {
    met = true;
    return true;
  });
  return met;
}

/** How often the ray crosses a part's surface. */
export function meetings(part: StagePart, ray: Ray): number {
  let count = 0;
  eachMeeting(part, ray, Infinity, () => {
    count += 1;
    return false;
  });
  return count;
}

/** How many porous layers of a part the ray crosses before a share of its direction; the seam of two triangles is one. */
export function layersCrossed(part: StagePart, ray: Ray, until: number): number {
  const met: number[] = [];
  eachMeeting(part, ray, until, (distance) => {
    if (!met.some((known) => Math.abs(known - distance) <= SAME_PLACE * distance)) met.push(distance);
    return false;
  });
  return met.length;
}

/** Visits every meeting before `until`, in no order, until a visit says that it has seen enough. */
function eachMeeting(
  part: StagePart,
  ray: Ray,
  until: number,
  isEnough: (distance: number) => boolean,
): void {
  if (!passesBall(part, ray)) return;
  const own = intoPart(part, ray);
  if (!passesBox(part, own, until)) return;
  const boxes = triangleRuns(part.shape);
  const { indices } = part.shape;
  const corners = RUN_TRIANGLES * 3;
  for (let run = 0; run * corners < indices.length; run += 1) {
    if (boxes.length > 6 && !passesRun(boxes, run * 6, own, until)) continue;
    const last = Math.min(indices.length, (run + 1) * corners);
    if (meetsTriangles(part.shape, own, run * corners, last, until, isEnough)) return;
  }
}

/** Whether a ray passes the box of a run of triangles before `until`. */
function passesRun(boxes: Float64Array, at: number, { origin, direction }: Ray, until: number): boolean {
  let from = 0;
  let to = until;
  for (let axis = 0; axis < 3; axis += 1) {
    const low = boxes[at + axis] - origin[axis];
    const high = boxes[at + axis + 3] - origin[axis];
    const way = direction[axis];
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

/** Visits the meetings with the triangles of indices `first` to `last`; true once a visit has seen enough. */
function meetsTriangles(
  { positions, indices }: PartShape,
  { origin: o, direction: d }: Ray,
  first: number,
  last: number,
  until: number,
  isEnough: (distance: number) => boolean,
): boolean {
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
    const px = d[1] * vz - d[2] * vy;
    const py = d[2] * vx - d[0] * vz;
    const pz = d[0] * vy - d[1] * vx;
    const determinant = ux * px + uy * py + uz * pz;
    if (determinant === 0) continue;
    const tx = o[0] - ax;
    const ty = o[1] - ay;
    const tz = o[2] - az;
    const along = (tx * px + ty * py + tz * pz) / determinant;
    if (along < 0 || along > 1) continue;
    const qx = ty * uz - tz * uy;
    const qy = tz * ux - tx * uz;
    const qz = tx * uy - ty * ux;
    const second = (d[0] * qx + d[1] * qy + d[2] * qz) / determinant;
    if (second < 0 || along + second > 1) continue;
    const distance = (vx * qx + vy * qy + vz * qz) / determinant;
    if (distance > 0 && distance < until && isEnough(distance)) return true;
  }
  return false;
}

/** The balls around a stage's solids, five numbers each: the part's number, its middle, its radius. */
const SOLIDS = new WeakMap<SightStage, Float64Array>();

function solidsOf(stage: SightStage): Float64Array {
  const known = SOLIDS.get(stage);
  if (known) return known;
  const solids = stage.parts.filter(({ shape }) => shape.openness === null);
  const balls = new Float64Array(solids.length * 5);
  solids.forEach(({ index, centre, radius }, k) => {
    balls.set([index, ...centre, radius * (1 + 1e-9) + 1e-9], 5 * k);
  });
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
  const blocks = (part: StagePart) => part !== target && part !== ignore && meetsBefore(part, ray, until);
  if (likely.some((part) => part.shape.openness === null && blocks(part))) return true;
  const balls = solidsOf(stage);
  const [ox, oy, oz] = ray.origin;
  const [dx, dy, dz] = ray.direction;
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
    if (blocks(stage.parts[balls[k]])) return true;
  }
  return false;
}

/** Whether the part is the first solid (or a porous layer before any solid) that the ray meets. */
export function showsAlong(
  stage: SightStage,
  ray: Ray,
  target: StagePart,
  ignore: StagePart | null,
  likely: readonly StagePart[],
): boolean {
  const distance = meets(target, ray);
  return distance < Infinity && !isBlocked(stage, ray, distance, target, ignore, likely);
}
