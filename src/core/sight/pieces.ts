import { add, cross, dot, length, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import type { PartShape } from '../form/types';
import { filledBy } from './closed';
import { cutPolygon } from './cutting';

/** One side of a block: its unit normal outwards, and how far out it lies. */
export interface Side {
  readonly normal: Vec3;
  readonly offset: number;
}

/** A convex piece of a solid: the sides that bound it, a ball around it, and the room that it holds, m³. */
export interface Piece {
  readonly sides: readonly Side[];
  readonly centre: Vec3;
  readonly radius: number;
  readonly volume: number;
}

/** Corners within this of a plane are on it, metres. */
const FLAT_METRES = 2e-5;
/** A face of less than half of this, m², has no direction. */
const NO_AREA = 1e-9;
/** All pieces together hold what the solid holds but for this share. */
const SAME_VOLUME = 1e-4;
/** A face is cut by this many planes at most, each of which adds a corner. */
const MOST_CUTS = 32;

/** A flat convex polygon, three numbers a corner, and the plane that it lies in. */
interface Face {
  readonly ring: Float64Array;
  readonly side: Side;
}

/** The faces of a shape, outwards; those without area left out. */
function facesOf({ positions, indices }: PartShape): Face[] {
  const faces: Face[] = [];
  for (let k = 0; k < indices.length; k += 3) {
    const ring = new Float64Array(9);
    for (let c = 0; c < 3; c += 1)
      for (let axis = 0; axis < 3; axis += 1) ring[3 * c + axis] = positions[3 * indices[k + c] + axis];
    const at = (corner: number): Vec3 => [ring[3 * corner], ring[3 * corner + 1], ring[3 * corner + 2]];
    const across = cross(subtract(at(1), at(0)), subtract(at(2), at(0)));
    if (length(across) < NO_AREA) continue;
    const normal = unit(across);
    faces.push({ ring, side: { normal, offset: dot(normal, at(0)) } });
  }
  return faces;
}

/** How far the corners of a face reach before and behind a plane, metres. */
function reachOf({ ring }: Face, { normal: [a, b, c], offset }: Side): { before: number; behind: number } {
  let [before, behind] = [0, 0];
  for (let k = 0; k < ring.length; k += 3) {
    const height = a * ring[k] + b * ring[k + 1] + c * ring[k + 2] - offset;
    before = Math.max(before, height);
    behind = Math.max(behind, -height);
  }
  return { before, behind };
}

/** What of a face lies behind a plane, or with `sign` −1 before it. */
function partOf({ ring, side }: Face, { normal: [a, b, c], offset }: Side, sign: 1 | -1): Face {
  const into = new Float64Array(3 * (ring.length / 3 + 1));
  const left = cutPolygon(ring, ring.length / 3, -sign * a, -sign * b, -sign * c, -sign * offset, into);
  return { ring: into.slice(0, 3 * left), side };
}

/** The plane of the face that the fewest others have to be cut by. */
function leastCutting(faces: readonly Face[]): Side {
  let least = Infinity;
  let best = faces[0].side;
  for (const { side } of faces) {
    const cut = faces.filter((face) => {
      const { before, behind } = reachOf(face, side);
      return before > FLAT_METRES && behind > FLAT_METRES;
    }).length;
    if (cut >= least) continue;
    least = cut;
    best = side;
    if (cut === 0) break;
  }
  return best;
}

/**
 * Cuts what some faces bound along the planes of those faces, until no face is left inside of what was cut off: all that
 * is behind every plane that it was cut by is solid then. False where it falls into more than so many pieces.
 */
function cutApart(
  faces: readonly Face[],
  sides: readonly Side[],
  most: number,
  found: (readonly Side[])[],
): boolean {
  if (found.length === most || sides.length > MOST_CUTS) return false;
  const plane = leastCutting(faces);
  const before: Face[] = [];
  const behind: Face[] = [];
  for (const face of faces) {
    const reach = reachOf(face, plane);
    if (reach.before > FLAT_METRES) before.push(reach.behind > FLAT_METRES ? partOf(face, plane, -1) : face);
    if (reach.behind > FLAT_METRES) behind.push(reach.before > FLAT_METRES ? partOf(face, plane, 1) : face);
  }
  const inner = [...sides, plane];
  if (behind.length === 0) found.push(inner);
  else if (!cutApart(behind, inner, most, found)) return false;
  const outer: Side = { normal: scale(plane.normal, -1), offset: -plane.offset };
  return before.length === 0 || cutApart(before, [...sides, outer], most, found);
}

/** A side as a large square, cut by all others: what of it bounds the piece. */
function faceOn(side: Side, sides: readonly Side[], middle: Vec3, reach: number): Float64Array {
  const { normal, offset } = side;
  const odd: Vec3 = Math.abs(normal[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0];
  const u = scale(unit(cross(odd, normal)), reach);
  const v = cross(normal, u);
  const foot = add(middle, scale(normal, offset - dot(normal, middle)));
  let ring = new Float64Array(3 * (sides.length + 4));
  let spare = new Float64Array(ring.length);
  const corners = [add(u, v), subtract(v, u), scale(add(u, v), -1), subtract(u, v)];
  for (const [k, corner] of corners.entries()) ring.set(add(foot, corner), 3 * k);
  let count = 4;
  for (const other of sides) {
    if (other === side) continue;
    const [a, b, c] = other.normal;
    count = cutPolygon(ring, count, -a, -b, -c, -other.offset, spare);
    [ring, spare] = [spare, ring];
  }
  return ring.slice(0, 3 * count);
}

/** A piece by the sides that it was cut by, without those that do not touch it. */
function pieceOf(sides: readonly Side[], middle: Vec3, reach: number): Piece {
  const faces = sides.map((side) => ({ side, ring: faceOn(side, sides, middle, reach) }));
  const bounding = faces.filter(({ ring }) => ring.length >= 9);
  const corners = bounding.flatMap(({ ring }) =>
    Array.from({ length: ring.length / 3 }, (_, k): Vec3 => [ring[3 * k], ring[3 * k + 1], ring[3 * k + 2]]),
  );
  const low = [0, 1, 2].map((axis) => Math.min(...corners.map((corner) => corner[axis])));
  const high = [0, 1, 2].map((axis) => Math.max(...corners.map((corner) => corner[axis])));
  const centre: Vec3 = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
  const radius = Math.max(...corners.map((corner) => length(subtract(corner, centre))));
  let volume = 0;
  for (const { ring } of bounding) {
    const at = (k: number): Vec3 => subtract([ring[3 * k], ring[3 * k + 1], ring[3 * k + 2]], centre);
    for (let k = 1; 3 * (k + 1) < ring.length; k += 1) volume += dot(at(0), cross(at(k), at(k + 1))) / 6;
  }
  return { sides: bounding.map(({ side }) => side), centre, radius, volume };
}

/** What some faces shut in, m³, reckoned from a place near them. */
function volumeOf(faces: readonly Face[], from: Vec3): number {
  let volume = 0;
  for (const { ring } of faces) {
    const at = (k: number): Vec3 => subtract([ring[3 * k], ring[3 * k + 1], ring[3 * k + 2]], from);
    volume += dot(at(0), cross(at(1), at(2))) / 6;
  }
  return volume;
}

/**
 * Convex pieces that together fill a closed solid, cut along the planes of its faces as a tree of planes does; none where
 * it falls into more than `most`, or where they do not hold what it holds.
 *
 * Source: [solid-bsp]
 */
export function piecesOf(shape: PartShape, most: number): readonly Piece[] {
  const faces = facesOf(shape);
  const { low, high } = filledBy(shape);
  const middle: Vec3 = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
  const reach = 2 * length(subtract(high, low));
  const found: (readonly Side[])[] = [];
  if (faces.length === 0 || !cutApart(faces, [], most, found)) return [];
  const pieces = found.map((sides) => pieceOf(sides, middle, reach));
  const whole = volumeOf(faces, middle);
  const sum = pieces.reduce((total, { volume }) => total + volume, 0);
  return Math.abs(sum - whole) <= SAME_VOLUME * whole ? pieces : [];
}
