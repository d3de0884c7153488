import { turned } from '../form/build/placement';
import { add, cross, dot, length, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import type { PartShape } from '../form/types';
import { solidOf } from './closed';
import { heightOver, type Mirror, reflected } from './mirrors';
import { cornersOf } from './rects';
import { type SightStage, type StagePart, worldOf } from './stage';

/** More faces than this are not tried for being a block. */
const MOST_FACES = 64;
/** Corners within this of a face's plane are on it, metres. */
const FLAT_METRES = 2e-5;
/** A block whose foot is no higher over a mirror stands on it, metres. */
const ON_MIRROR_METRES = 1e-4;
/** So much of the picture, in pixels, a block has to reach beyond what it hides: corners are rounded there. */
const BEYOND_PIXELS = 1.5;

/** One side of a block: its unit normal outwards, and how far out it lies. */
interface Side {
  readonly normal: Vec3;
  readonly offset: number;
  /** Whether what is hidden may come up to it: a mirror's face, and no edge in the picture. */
  readonly isSharp?: true;
}

/** The sides of a closed convex solid. */
type Block = readonly Side[];

const BLOCKS = new WeakMap<PartShape, Block | 'none'>();

function findBlock(shape: PartShape): Block | 'none' {
  const { positions, indices, openness, mirror } = shape;
  if (openness !== null || mirror || indices.length > 3 * MOST_FACES) return 'none';
  if (!solidOf(shape).isClosed) return 'none';
  const at = (corner: number): Vec3 => [
    positions[3 * corner],
    positions[3 * corner + 1],
    positions[3 * corner + 2],
  ];
  const planes: { normal: Vec3; offset: number }[] = [];
  for (let k = 0; k < indices.length; k += 3) {
    const [a, b, c] = [at(indices[k]), at(indices[k + 1]), at(indices[k + 2])];
    const [u, v] = [subtract(b, a), subtract(c, a)];
    const across = cross(u, v);
    if (length(across) < 1e-9) continue;
    const normal = unit(across);
    const offset = dot(normal, a);
    const isKnown = planes.some(
      (plane) => dot(plane.normal, normal) > 1 - 1e-9 && Math.abs(plane.offset - offset) < FLAT_METRES,
    );
    if (isKnown) continue;
    for (let corner = 0; 3 * corner < positions.length; corner += 1)
      if (dot(normal, at(corner)) > offset + FLAT_METRES) return 'none';
    planes.push({ normal, offset });
  }
  return planes.length < 4 ? 'none' : planes;
}

/** A shape as a block; null where it is hollow, porous, or not convex. */
function blockOf(shape: PartShape): Block | null {
  let block = BLOCKS.get(shape);
  if (!block) {
    block = findBlock(shape);
    BLOCKS.set(shape, block);
  }
  return block === 'none' ? null : block;
}

/** Where lines of sight begin: the eye, or its image behind a mirror, with what a pixel spans a metre away. */
export interface Eye {
  readonly at: Vec3;
  /** The mirror that shows it; what lies behind that counts for nothing. */
  readonly mirror: Mirror | null;
  readonly pixelTangent: number;
}

/**
 * The sides of a block as a mirror doubles it, where it stands on the mirror's plane: then it hides what it stands
 * before and the very place where that would be mirrored. Else what of it is before the mirror.
 */
function doubled(block: Block, { normal, point }: Mirror): Block {
  const offset = dot(normal, point);
  const isFoot = (side: Side): boolean =>
    dot(side.normal, normal) < -1 + 1e-9 && -side.offset <= offset + ON_MIRROR_METRES;
  const rest = block.filter((side) => !isFoot(side));
  if (rest.length === block.length)
    return [...block, { normal: scale(normal, -1), offset: -offset, isSharp: true }];
  return rest.flatMap((side) => {
    const along = dot(side.normal, normal);
    const mirrored = subtract(side.normal, scale(normal, 2 * along));
    return [side, { normal: mirrored, offset: side.offset - 2 * along * offset }];
  });
}

/** A block where it stands, in the world, and how mirrors double it. */
interface Standing {
  readonly part: StagePart;
  readonly block: Block;
  readonly name: string;
  readonly doubles: WeakMap<Mirror, Block>;
}

/** What a block hides from an eye is hidden by these sides of it. */
function sidesFor({ block, doubles }: Standing, mirror: Mirror | null): Block {
  if (!mirror) return block;
  let double = doubles.get(mirror);
  if (!double) {
    double = doubled(block, mirror);
    doubles.set(mirror, double);
  }
  return double;
}

/** Whether a line from an eye passes inside of all sides, the sharp ones aside by so much. */
function isHiddenBy(sides: Block, eye: Vec3, corner: Vec3, pixelTangent: number): boolean {
  const [x, y, z] = [corner[0] - eye[0], corner[1] - eye[1], corner[2] - eye[2]];
  const inset = BEYOND_PIXELS * pixelTangent * Math.sqrt(x * x + y * y + z * z);
  let [from, to] = [0, 1];
  for (const { normal, offset, isSharp } of sides) {
    // Where eye + share · way is on the inner side: share · along ≤ room.
    const along = normal[0] * x + normal[1] * y + normal[2] * z;
    const room =
      offset - (isSharp ? 0 : inset) - (normal[0] * eye[0] + normal[1] * eye[1] + normal[2] * eye[2]);
    if (along > 0) to = Math.min(to, room / along);
    else if (along < 0) from = Math.max(from, room / along);
    else if (room < 0) return false;
    if (from >= to) return false;
  }
  return from > 0;
}

/** How near a stretch from an eye to a place comes to another place, metres, squared. */
function apartSquared(eye: Vec3, to: Vec3, place: Vec3): number {
  const [x, y, z] = [to[0] - eye[0], to[1] - eye[1], to[2] - eye[2]];
  const [u, v, w] = [place[0] - eye[0], place[1] - eye[1], place[2] - eye[2]];
  const square = x * x + y * y + z * z;
  const share = square > 0 ? Math.min(1, Math.max(0, (u * x + v * y + w * z) / square)) : 0;
  const [a, b, c] = [u - share * x, v - share * y, w - share * z];
  return a * a + b * b + c * c;
}

/** Whether the ball around a block comes between an eye and a ball: else it hides nothing in that. */
function isBetween({ centre, radius }: StagePart, eye: Eye, middle: Vec3, reach: number): boolean {
  const within = (radius + reach) * (radius + reach);
  if (apartSquared(eye.at, middle, centre) <= within) return true;
  return eye.mirror !== null && apartSquared(eye.at, middle, reflected(centre, eye.mirror)) <= within;
}

/** A box is halved along all sides so often where no block hides all of it. */
const MOST_HALVINGS = 2;

/** The eight corners of each eighth of a box that is given by its own corners, in the order of `cornersOf`. */
function eighths(corners: readonly Vec3[]): readonly (readonly Vec3[])[] {
  const [origin, x, y, , z] = corners;
  const ways = [subtract(x, origin), subtract(y, origin), subtract(z, origin)];
  const at = (shares: readonly number[]): Vec3 =>
    ways.reduce<Vec3>((sum, way, axis) => add(sum, scale(way, shares[axis])), origin);
  const bits = (k: number): readonly number[] => [k & 1, (k >> 1) & 1, (k >> 2) & 1];
  return Array.from({ length: 8 }, (_, eighth) =>
    Array.from({ length: 8 }, (__, k) => at(bits(k).map((bit, axis) => (bit + bits(eighth)[axis]) / 2))),
  );
}

/** Finds what is hidden for certain without a picture: behind blocks of other things. */
export class Blocks {
  /** What hid a part of an item last is likely to hide it from the next camera too. */
  private readonly latest = new Map<string, string>();

  /**
   * What of an item no block is known to hide from some eyes: boxes by their eight corners, and, for an image, where
   * they seem to be. None where all of it is hidden for certain.
   */
  open(stage: SightStage, item: number, eyes: readonly Eye[]): readonly (readonly Vec3[])[] {
    const open: (readonly Vec3[])[] = [];
    const others = blocksOn(stage).filter(({ part }) => part.item !== item);
    for (let k = stage.firstPart[item]; k < stage.firstPart[item + 1]; k += 1)
      for (const [e, eye] of eyes.entries()) {
        const name = `${stage.forms[item].id} ${k - stage.firstPart[item]} ${e}`;
        const { mirror } = eye;
        const { centre, radius } = stage.parts[k];
        const between = others.filter(({ part }) => isBetween(part, eye, centre, radius));
        const boxes = this.openBoxes(between, eye, cornersOf(stage.parts[k]), name, MOST_HALVINGS);
        open.push(...(mirror ? boxes.map((box) => box.map((corner) => reflected(corner, mirror))) : boxes));
      }
    return open;
  }

  private openBoxes(
    between: readonly Standing[],
    eye: Eye,
    corners: readonly Vec3[],
    name: string,
    halvings: number,
  ): readonly (readonly Vec3[])[] {
    const { mirror } = eye;
    if (mirror && corners.every((corner) => heightOver(mirror, corner) <= 0)) return [];
    if (between.length === 0) return [corners];
    const isHiding = (standing: Standing): boolean => {
      const sides = sidesFor(standing, mirror);
      return corners.every((corner) => isHiddenBy(sides, eye.at, corner, eye.pixelTangent));
    };
    const last = this.latest.get(name);
    const known = last === undefined ? undefined : between.find((standing) => standing.name === last);
    if (known && isHiding(known)) return [];
    const found = between.find(isHiding);
    if (found) {
      this.latest.set(name, found.name);
      return [];
    }
    if (halvings === 0) return [corners];
    return eighths(corners).flatMap((box, k) =>
      this.openBoxes(between, eye, box, `${name} ${k}`, halvings - 1),
    );
  }
}

const STANDING = new WeakMap<StagePart, Standing | 'none'>();
const ON_STAGE = new WeakMap<SightStage, readonly Standing[]>();

/** A part as a block in the world; null where it is none. */
function standingOf(part: StagePart, name: string): Standing | null {
  let standing = STANDING.get(part);
  if (!standing) {
    const block = blockOf(part.shape);
    const inWorld = block?.map((side): Side => {
      const m = part.worldFromPart;
      if (!m) return side;
      const normal = turned(m, side.normal);
      return { normal, offset: side.offset + dot(normal, worldOf(part, [0, 0, 0])) };
    });
    standing = inWorld ? { part, block: inWorld, name, doubles: new WeakMap() } : 'none';
    STANDING.set(part, standing);
  }
  return standing === 'none' ? null : standing;
}

/** The blocks of a stage. */
function blocksOn(stage: SightStage): readonly Standing[] {
  const known = ON_STAGE.get(stage);
  if (known) return known;
  const found = stage.parts.flatMap((part) => {
    const name = `${stage.forms[part.item].id} ${part.index - stage.firstPart[part.item]}`;
    return standingOf(part, name) ?? [];
  });
  ON_STAGE.set(stage, found);
  return found;
}

/** The eye of a camera and its images behind some mirrors. */
export const eyesOf = (at: Vec3, mirrors: readonly Mirror[], pixelTangent: number): readonly Eye[] => [
  { at, mirror: null, pixelTangent },
  ...mirrors.map((mirror) => ({ at: reflected(at, mirror), mirror, pixelTangent })),
];
