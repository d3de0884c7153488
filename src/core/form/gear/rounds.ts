import { cos, hypot, sin } from '../../units/steadyMath';
import type { ShapeBuilder } from '../build/shapeBuilder';
import { add, dot, frameAround, length, scale, subtract, unit, type Vec3 } from '../build/vector';
import type { Tube } from '../types';

/** A corner of a turned profile: metres along the axis, metres from it. */
export type ProfilePoint = readonly [along: number, radius: number];

interface Axis {
  readonly at: Vec3;
  /** Unit vector. */
  readonly along: Vec3;
}

/** Turns sharper than this between two pieces of a profile keep a hard edge, as a cosine. */
const HARD_EDGE_COSINE = 0.8;

/**
 * A solid turned on a lathe: `profile` runs from its start on the axis round the outside to its end, so that the
 * solid lies between it and the axis; it may come back inside, which makes a cup. Ends off the axis are capped.
 */
export function addLathe(
  builder: ShapeBuilder,
  axis: Axis,
  profile: readonly ProfilePoint[],
  sides = 12,
): void {
  const [side, up] = frameAround(axis.along);
  const ringAt = ([along, radius]: ProfilePoint): number[] => {
    const centre = add(axis.at, scale(axis.along, along));
    if (radius === 0) return [builder.corner(centre)];
    return Array.from({ length: sides }, (_, k) => {
      const turn = (2 * Math.PI * k) / sides;
      const spoke = add(scale(side, radius * cos(turn)), scale(up, radius * sin(turn)));
      return builder.corner(add(centre, spoke));
    });
  };
  const last = profile.length - 1;
  let lower = ringAt(profile[0]);
  cap(builder, ringAt(profile[0]), false);
  for (let k = 1; k <= last; k += 1) {
    const upper = ringAt(profile[k]);
    joinRings(builder, lower, upper);
    lower = k < last && isHard(profile[k - 1], profile[k], profile[k + 1]) ? ringAt(profile[k]) : upper;
  }
  cap(builder, ringAt(profile[last]), true);
}

function isHard(before: ProfilePoint, at: ProfilePoint, after: ProfilePoint): boolean {
  const [a, b] = [at[0] - before[0], at[1] - before[1]];
  const [c, d] = [after[0] - at[0], after[1] - at[1]];
  return a * c + b * d < HARD_EDGE_COSINE * hypot(a, b) * hypot(c, d);
}

/** The band between two rings, or between a ring and a pole. */
function joinRings(builder: ShapeBuilder, lower: readonly number[], upper: readonly number[]): void {
  const sides = Math.max(lower.length, upper.length);
  for (let k = 0; k < sides; k += 1) {
    const next = (k + 1) % sides;
    if (lower.length > 1) builder.triangle(lower[k], lower[next], upper[upper.length > 1 ? next : 0]);
    if (upper.length > 1) builder.triangle(lower[lower.length > 1 ? k : 0], upper[next], upper[k]);
  }
}

function cap(builder: ShapeBuilder, ring: readonly number[], isEnd: boolean): void {
  for (let k = 1; k + 1 < ring.length; k += 1) {
    if (isEnd) builder.triangle(ring[0], ring[k], ring[k + 1]);
    else builder.triangle(ring[0], ring[k + 1], ring[k]);
  }
}

/** A straight round member, capped, with its axis noted. */
export function addRod(builder: ShapeBuilder, from: Vec3, to: Vec3, radius: number, sides = 8): void {
  addPipe(builder, [from, to], radius, sides);
}

/** Turns with a smaller cosine than this are not mitred, as the mitre would become a spike. */
const SHARPEST_MITRE_COSINE = -0.2;

/**
 * A round member along a path, mitred at its corners and capped at its ends, with the axis of each piece noted.
 * Corners too sharp for a mitre end one pipe and start the next; points that repeat are left out.
 */
export function addPipe(builder: ShapeBuilder, path: readonly Vec3[], radius: number, sides = 6): void {
  const points = path.filter((point, k) => k === 0 || length(subtract(point, path[k - 1])) > 1e-6);
  let start = 0;
  for (let k = 1; k < points.length; k += 1) {
    const along = unit(subtract(points[k], points[k - 1]));
    const isLast = k === points.length - 1;
    if (!isLast && dot(along, unit(subtract(points[k + 1], points[k]))) > SHARPEST_MITRE_COSINE) continue;
    addBentPipe(builder, points.slice(start, k + 1), radius, sides);
    start = k;
  }
}

function addBentPipe(builder: ShapeBuilder, points: readonly Vec3[], radius: number, sides: number): void {
  const pieces = points.slice(1).map((point, k) => unit(subtract(point, points[k])));
  const [side, up] = frameAround(pieces[0]);
  let spokes = Array.from({ length: sides }, (_, k): Vec3 => {
    const turn = (2 * Math.PI * k) / sides;
    return add(scale(side, radius * cos(turn)), scale(up, radius * sin(turn)));
  });
  const ringAt = (point: Vec3): number[] => spokes.map((spoke) => builder.corner(add(point, spoke)));
  cap(builder, ringAt(points[0]), false);
  let lower = ringAt(points[0]);
  for (let k = 1; k < points.length; k += 1) {
    const along = pieces[k - 1];
    const onward = k < pieces.length ? pieces[k] : along;
    const mitre = unit(add(along, onward));
    // Slid along the piece that ends here, on to the plane that halves the corner.
    spokes = spokes.map((spoke) => {
      const level = subtract(spoke, scale(along, dot(spoke, along)));
      return subtract(level, scale(along, dot(level, mitre) / dot(along, mitre)));
    });
    const upper = ringAt(points[k]);
    joinRings(builder, lower, upper);
    lower = upper;
  }
  cap(builder, ringAt(points[points.length - 1]), true);
  noteTubes(
    builder,
    points.slice(1).map((point, k) => ({ from: points[k], to: point, radius })),
  );
}

function noteTubes(builder: ShapeBuilder, tubes: readonly Tube[]): void {
  builder.include({
    positions: new Float32Array(0),
    indices: new Uint32Array(0),
    tubes,
    substance: 'metal',
    colour: null,
    openness: null,
    mirror: null,
    smooth: true,
  });
}

/** A circle of points round a centre in the plane of two unit vectors, from one angle to another, in degrees. */
export function arc(
  centre: Vec3,
  plane: readonly [Vec3, Vec3],
  radius: number,
  fromDegrees: number,
  toDegrees: number,
  steps: number,
): Vec3[] {
  return Array.from({ length: steps + 1 }, (_, k) => {
    const turn = ((fromDegrees + ((toDegrees - fromDegrees) * k) / steps) * Math.PI) / 180;
    const spoke = add(scale(plane[0], radius * cos(turn)), scale(plane[1], radius * sin(turn)));
    return add(centre, spoke);
  });
}
