import type { Vec3 } from '../../form/build/vector';
import type { Cover } from './covers';
import type { Planes } from './prism';
import type { Piece } from './thing';

/** Where the foot of a thing may be: a square around [x, z] on a deck. */
export interface Foot {
  readonly x: number;
  readonly deckMetres: number;
  readonly z: number;
  readonly halfMetres: number;
}

/** How a thing is looked at. */
export interface Sight {
  /** Where the eye is, and how far from there it may be, metres. */
  readonly eye: Vec3;
  readonly moved: number;
  /** What it takes in. */
  readonly planes: Planes;
}

/**
 * The share of the way from the eye to a place at which it leaves a cover, `inset` metres inside its faces; 0 where it
 * passes.
 */
function leaves({ planes }: Cover, eye: Vec3, x: number, y: number, z: number, inset: number): number {
  let from = 0;
  let to = 1;
  for (let k = 0; k < planes.length; k += 4) {
    const a = planes[k];
    const b = planes[k + 1];
    const c = planes[k + 2];
    const reach = planes[k + 3] - inset;
    const start = a * eye[0] + b * eye[1] + c * eye[2] - reach;
    const end = a * x + b * y + c * z - reach;
    if (start > 0) {
      if (end >= 0) return 0;
      from = Math.max(from, start / (start - end));
    } else if (end > 0) to = Math.min(to, start / (start - end));
    if (from >= to) return 0;
  }
  return to;
}

/** Whether all of a piece lies outside one of the planes, wherever in a square its foot is. */
function isOutside(
  planes: Planes,
  { bones, radius }: Piece,
  { x, deckMetres, z, halfMetres }: Foot,
): boolean {
  for (let k = 0; k < planes.length; k += 4) {
    const a = planes[k];
    const b = planes[k + 1];
    const c = planes[k + 2];
    const limit = -(radius + halfMetres * (Math.abs(a) + Math.abs(c)) + 1e-6);
    const offset = a * x + b * deckMetres + c * z + planes[k + 3];
    let isOut = true;
    for (let bone = 0; isOut && bone < bones.length; bone += 1) {
      const { from, to } = bones[bone];
      isOut =
        a * from[0] + b * from[1] + c * from[2] + offset < limit &&
        a * to[0] + b * to[1] + c * to[2] + offset < limit;
    }
    if (isOut) return true;
  }
  return false;
}

/**
 * The heights between which a frame looks at a column that reaches so far to each side; the lower above the upper where
 * it does not.
 */
export function heightsSeen(planes: Planes, x: number, z: number, reach: number): readonly [number, number] {
  let [low, high] = [-Infinity, Infinity];
  for (let k = 0; k < planes.length; k += 4) {
    const a = planes[k];
    const b = planes[k + 1];
    const c = planes[k + 2];
    const rest = a * x + c * z + planes[k + 3] + reach * (Math.abs(a) + Math.abs(c));
    if (Math.abs(b) < 1e-9) {
      if (rest < 0) return [Infinity, -Infinity];
    } else if (b > 0) low = Math.max(low, -rest / b);
    else high = Math.min(high, -rest / b);
  }
  return [low, high];
}

const isUpright = ({ bones }: Piece): boolean =>
  bones.length === 1 && bones[0].from[0] === bones[0].to[0] && bones[0].from[2] === bones[0].to[2];

/**
 * Whether each piece of a thing that is taken in lies behind one cover, wherever in a square its foot is. What lies
 * behind a convex solid, as seen from an eye, is convex: so the ends of a piece at the corners of the square tell of
 * all. A ball lies behind where the rays to its middle are so far inside the solid as it is wide there, and for an eye
 * that moves where they are as far inside as it does. It may say no wrongly, never yes.
 */
export function isCovered(
  pieces: readonly Piece[],
  foot: Foot,
  sight: Sight,
  covers: readonly Cover[],
): boolean {
  const { planes } = sight;
  for (const piece of pieces) {
    if (isOutside(planes, piece, foot)) continue;
    let [lowest, highest] = [-Infinity, Infinity];
    if (isUpright(piece)) {
      const { from, radius } = piece.bones[0];
      const reach = foot.halfMetres + radius * 2;
      [lowest, highest] = heightsSeen(planes, from[0] + foot.x, from[2] + foot.z, reach);
      if (lowest > highest) continue;
    }
    const between = [lowest, highest] as const;
    const isHidden = covers.some((cover) => isBehind(cover, piece, foot, sight, between));
    if (!isHidden) return false;
  }
  return true;
}

/** Whether a piece between two heights lies behind a cover, wherever in a square its foot is. */
function isBehind(
  cover: Cover,
  { ends, radius }: Piece,
  { x, deckMetres, z, halfMetres }: Foot,
  { eye, moved }: Sight,
  [lowest, highest]: readonly [number, number],
): boolean {
  for (const end of ends) {
    const y = Math.min(highest, Math.max(lowest, end[1] + deckMetres));
    for (let k = 0; k < 4; k += 1) {
      const cornerX = x + end[0] + (k & 1 ? halfMetres : -halfMetres);
      const cornerZ = z + end[2] + (k & 2 ? halfMetres : -halfMetres);
      const share = leaves(cover, eye, cornerX, y, cornerZ, moved);
      if (share === 0) return false;
      // On the way a ray beside this one is as much nearer to it as the cover is nearer than the place.
      if (radius > 0 && leaves(cover, eye, cornerX, y, cornerZ, moved + radius * share) === 0) return false;
    }
  }
  return true;
}
