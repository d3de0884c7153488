import { add, dot, scale, type Vec3 } from '../../form/build/vector';
import type { Camera } from '../../optics/types';
import { NEAREST_METRES } from '../../sight/clip';

/**
 * A stump of a pyramid with as many sides as corners, in the world: x, y, z per corner, the same number of them at its
 * near and at its far end.
 */
export interface Prism {
  readonly near: Float64Array;
  readonly far: Float64Array;
}

/** How far a frame reaches from the camera's axis: a tangent for what grows with the depth, metres for what does not. */
export interface Reach {
  readonly tanX: number;
  readonly tanY: number;
  readonly metres: number;
  /** How much nearer than the nearest that is seen, metres. */
  readonly back: number;
}

/** The box that things stand in, [low, high]. */
export type Room = readonly [Vec3, Vec3];

/** The corners of a room. */
export function* cornersOf([low, high]: Room): Generator<Vec3> {
  for (let k = 0; k < 8; k += 1) {
    yield [k & 1 ? high[0] : low[0], k & 2 ? high[1] : low[1], k & 4 ? high[2] : low[2]];
  }
}

const SIGNS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

/**
 * What a frame takes in of a room, grown by `radius` metres to every side, so that a ball of that radius is touched
 * where its middle is inside. Null where the room is behind the camera.
 */
export function framePrism(camera: Camera, reach: Reach, radius: number, room: Room): Prism | null {
  const { position, right, up, forward } = camera.pose;
  const at = dot(position, forward);
  let deepest = Number.NEGATIVE_INFINITY;
  for (const corner of cornersOf(room)) deepest = Math.max(deepest, dot(corner, forward) - at);
  const from = NEAREST_METRES - radius - reach.back;
  const to = deepest + radius + 1;
  if (to <= from) return null;
  const growX = reach.metres + radius * Math.sqrt(1 + reach.tanX * reach.tanX);
  const growY = reach.metres + radius * Math.sqrt(1 + reach.tanY * reach.tanY);
  const end = (depth: number): Float64Array => {
    const corners = new Float64Array(12);
    const width = Math.max(0, reach.tanX * depth + growX);
    const height = Math.max(0, reach.tanY * depth + growY);
    for (let k = 0; k < 4; k += 1) {
      for (let axis = 0; axis < 3; axis += 1) {
        corners[k * 3 + axis] =
          position[axis] +
          forward[axis] * depth +
          right[axis] * width * SIGNS[k][0] +
          up[axis] * height * SIGNS[k][1];
      }
    }
    return corners;
  };
  return { near: end(from), far: end(to) };
}

/** Planes as a, b, c, d for each: inside where a·x + b·y + c·z + d ≥ 0, with unit normals. */
export type Planes = Float64Array;

/** The five planes of what a frame takes in: its four sides and the nearest depth. */
export function framePlanes(camera: Camera, { tanX, tanY, metres, back }: Reach): Planes {
  const { position, right, up, forward } = camera.pose;
  const planes = new Float64Array(20);
  const put = (place: number, normal: Vec3, beyond: number): void => {
    planes.set([...normal, beyond - dot(normal, position)], place * 4);
  };
  const side = (place: number, across: Vec3, sign: number, tan: number): void => {
    const size = Math.sqrt(1 + tan * tan);
    put(place, scale(add(scale(across, sign), scale(forward, tan)), 1 / size), metres / size);
  };
  side(0, right, 1, tanX);
  side(1, right, -1, tanX);
  side(2, up, 1, tanY);
  side(3, up, -1, tanY);
  put(4, forward, back - NEAREST_METRES);
  return planes;
}
