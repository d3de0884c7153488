import { turned } from '../form/build/placement';
import { add, dot, scale, subtract, type Vec3 } from '../form/build/vector';
import type { PartShape } from '../form/types';
import type { Camera } from '../optics/types';
import { filledBy, solidOf } from './closed';
import { cornersOf } from './corners';
import { cornersSeen, type Eye, isBeyond, rectFor } from './eyes';
import type { PixelRect } from './filling';
import type { Grid } from './grid';
import { heightOver, type Mirror, reflected } from './mirrors';
import { type Piece, piecesOf, type Side } from './pieces';
import { type SightStage, type StagePart, worldOf } from './stage';

/** More faces than this are not tried for being one block, nor more than this for being put together of blocks. */
const MOST_FACES = 64;
const MOST_FACES_IN_PIECES = 128;
/** A solid that falls into more pieces than this is no good as blocks. */
const MOST_PIECES = 24;
/** Smaller pieces of a solid hide too little to be asked, m³. */
const LEAST_PIECE_M3 = 0.02;
/** A block whose foot is no higher over a mirror stands on it, metres. */
const ON_MIRROR_METRES = 1e-4;
/** So much of the picture, in pixels, a block has to reach beyond what it hides: corners are rounded there. */
const BEYOND_PIXELS = 1.5;

/** A side where what is hidden may come up to it: a mirror's face, and no edge in the picture. */
interface BlockSide extends Side {
  readonly isSharp?: true;
}

/** The sides of a closed convex solid. */
type Block = readonly BlockSide[];

const PIECES = new WeakMap<PartShape, readonly Piece[]>();

function findPieces(shape: PartShape): readonly Piece[] {
  const { indices, openness, mirror } = shape;
  if (openness !== null || mirror) return [];
  const { low, high } = filledBy(shape);
  const isLarge = (high[0] - low[0]) * (high[1] - low[1]) * (high[2] - low[2]) >= LEAST_PIECE_M3;
  const most = indices.length > 3 * MOST_FACES ? MOST_FACES_IN_PIECES : MOST_FACES;
  if (indices.length > 3 * most || (most > MOST_FACES && !isLarge) || !solidOf(shape).isClosed) return [];
  const pieces = piecesOf(shape, isLarge ? MOST_PIECES : 1);
  if (pieces.length === 1) return most > MOST_FACES ? [] : pieces;
  return pieces.filter(({ volume }) => volume >= LEAST_PIECE_M3);
}

/** The blocks that a shape is put together of; none where it is hollow, porous, or too round. */
function blocksOf(shape: PartShape): readonly Piece[] {
  const known = PIECES.get(shape);
  if (known) return known;
  const found = findPieces(shape);
  PIECES.set(shape, found);
  return found;
}

/**
 * The sides of a block as a mirror doubles it, where it stands on the mirror's plane: then it hides what it stands
 * before and the very place where that would be mirrored. Else what of it is before the mirror.
 */
function doubled(block: Block, { normal, point }: Mirror): Block {
  const offset = dot(normal, point);
  const isFoot = (side: BlockSide): boolean =>
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

/** What a mirror makes of a block: the sides that hide what is seen in it, and where its middle seems to be. */
interface Double {
  readonly sides: Block;
  readonly centre: Vec3;
}

/** A block of a part where it stands, in the world, with a ball around it; and how mirrors double it. */
interface Standing {
  readonly part: StagePart;
  readonly block: Block;
  readonly centre: Vec3;
  readonly radius: number;
  readonly doubles: WeakMap<Mirror, Double>;
}

function doubleIn(mirror: Mirror, { block, centre, doubles }: Standing): Double {
  let double = doubles.get(mirror);
  if (!double) {
    double = { sides: doubled(block, mirror), centre: reflected(centre, mirror) };
    doubles.set(mirror, double);
  }
  return double;
}

/** What a block hides from an eye is hidden by these sides of it. */
const sidesFor = (standing: Standing, mirror: Mirror | null): Block =>
  mirror ? doubleIn(mirror, standing).sides : standing.block;

/** Whether a line from an eye passes inside of all sides, the sharp ones aside by so much. */
function isHiddenBy(sides: Block, eye: Vec3, corner: Vec3, pixelTangent: number): boolean {
  const x = corner[0] - eye[0];
  const y = corner[1] - eye[1];
  const z = corner[2] - eye[2];
  const inset = BEYOND_PIXELS * pixelTangent * Math.sqrt(x * x + y * y + z * z);
  let from = 0;
  let to = 1;
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

/** Whether the stretch from an eye to a place comes as near to another place as this, metres. */
function comesWithin(eye: Vec3, to: Vec3, place: Vec3, metres: number): boolean {
  const x = to[0] - eye[0];
  const y = to[1] - eye[1];
  const z = to[2] - eye[2];
  const u = place[0] - eye[0];
  const v = place[1] - eye[1];
  const w = place[2] - eye[2];
  const square = x * x + y * y + z * z;
  const share = square > 0 ? Math.min(1, Math.max(0, (u * x + v * y + w * z) / square)) : 0;
  const a = u - share * x;
  const b = v - share * y;
  const c = w - share * z;
  return a * a + b * b + c * c <= metres * metres;
}

/** Whether the ball around a block comes between an eye and a ball: else it hides nothing in that. */
function isBetween(standing: Standing, { at, mirror }: Eye, middle: Vec3, reach: number): boolean {
  const { centre, radius } = standing;
  if (comesWithin(at, middle, centre, radius + reach)) return true;
  return mirror !== null && comesWithin(at, middle, doubleIn(mirror, standing).centre, radius + reach);
}

/** A box is halved along all sides so often where no block hides all of it. */
const MOST_HALVINGS = 2;

/** The box of a part or an eighth of it, kept while the part stands still: only eyes move. */
interface Box {
  /** In the order of `cornersOf`. */
  readonly corners: readonly Vec3[];
  eighths: readonly Box[] | null;
  /** By the number of an eye, what hid the box from it last, none where nothing did: asked first, as it likely hides it from the next place of that eye too. */
  readonly hidBy: (Standing | undefined)[];
}

const boxOf = (corners: readonly Vec3[]): Box => ({ corners, eighths: null, hidBy: [] });

/** The eighths of a box, each by its own corners. */
function eighthsOf(box: Box): readonly Box[] {
  if (box.eighths) return box.eighths;
  const [origin, x, y, , z] = box.corners;
  const ways = [subtract(x, origin), subtract(y, origin), subtract(z, origin)];
  const at = (shares: readonly number[]): Vec3 =>
    ways.reduce<Vec3>((sum, way, axis) => add(sum, scale(way, shares[axis])), origin);
  const bits = (k: number): readonly number[] => [k & 1, (k >> 1) & 1, (k >> 2) & 1];
  box.eighths = Array.from({ length: 8 }, (_, eighth) =>
    boxOf(
      Array.from({ length: 8 }, (__, k) => at(bits(k).map((bit, axis) => (bit + bits(eighth)[axis]) / 2))),
    ),
  );
  return box.eighths;
}

/** Finds what is hidden for certain without a picture: behind blocks of other things. */
export class Blocks {
  private readonly boxes = new WeakMap<StagePart, Box>();

  /** `halvings`: how often a box is halved along all its sides where no block hides all of it. */
  constructor(private readonly halvings = MOST_HALVINGS) {}

  /**
   * The pixels in which no block is known to hide an item from some eyes, one rectangle for each box that is left; none
   * where all of it is hidden for certain, or out of the picture.
   */
  open(
    stage: SightStage,
    item: number,
    eyes: readonly Eye[],
    camera: Camera,
    grid: Grid,
  ): readonly PixelRect[] {
    const open: PixelRect[] = [];
    for (let k = stage.firstPart[item]; k < stage.firstPart[item + 1]; k += 1) {
      const part = stage.parts[k];
      for (const eye of eyes) {
        const box = this.boxAround(part);
        if (isBehindMirror(box, eye) || isBeyond(box.corners, eye.sides, eye.at)) continue;
        for (const left of openBoxes(new Between(stage, part, eye), box, this.halvings)) {
          const rect = rectFor(left, eye, camera, grid);
          if (rect) open.push(rect);
        }
      }
    }
    return open;
  }

  private boxAround(part: StagePart): Box {
    let box = this.boxes.get(part);
    if (!box) {
      box = boxOf(cornersOf(part));
      this.boxes.set(part, box);
    }
    return box;
  }
}

/** Whether nothing of a box stands before the mirror that an eye looks into. */
const isBehindMirror = ({ corners }: Box, { mirror }: Eye): boolean =>
  mirror !== null && corners.every((corner) => heightOver(mirror, corner) <= 0);

/** The corners of what of a box an eye may see; none where it is out of the picture or behind the mirror. */
const cornersBefore = (box: Box, eye: Eye): readonly Vec3[] =>
  isBehindMirror(box, eye) ? [] : cornersSeen(box.corners, eye);

/** The blocks of other things that come between an eye and a part, found when they are asked for. */
class Between {
  private found: readonly Standing[] | null = null;

  constructor(
    private readonly stage: SightStage,
    private readonly part: StagePart,
    readonly eye: Eye,
  ) {}

  get all(): readonly Standing[] {
    const { centre, radius, item } = this.part;
    this.found ??= blocksOn(this.stage).filter(
      (block) => block.part.item !== item && isBetween(block, this.eye, centre, radius),
    );
    return this.found;
  }

  /** Whether a block of another thing, of a stage before this one, still stands where it stood. */
  isThere({ part }: Standing): boolean {
    return part.item !== this.part.item && this.stage.parts[part.index] === part;
  }
}

/** Of a box, what no block that comes between hides from an eye; boxes by their corners. */
function openBoxes(between: Between, box: Box, halvings: number): readonly (readonly Vec3[])[] {
  const { eye } = between;
  const seen = cornersBefore(box, eye);
  if (seen.length === 0) return [];
  // What one block hides is convex: it holds all between corners that it holds.
  const isHiding = (standing: Standing): boolean => {
    const sides = sidesFor(standing, eye.mirror);
    return seen.every((corner) => isHiddenBy(sides, eye.at, corner, eye.pixelTangent));
  };
  const { hidBy } = box;
  const last = hidBy[eye.number];
  if (last && between.isThere(last) && isHiding(last)) return [];
  hidBy[eye.number] = between.all.find(isHiding);
  if (hidBy[eye.number]) return [];
  return halvings === 0 || between.all.length === 0
    ? [box.corners]
    : eighthsOf(box).flatMap((eighth) => openBoxes(between, eighth, halvings - 1));
}

const STANDING = new WeakMap<StagePart, readonly Standing[]>();
const ON_STAGE = new WeakMap<SightStage, readonly Standing[]>();

/** The blocks of a part in the world. */
function standingOf(part: StagePart): readonly Standing[] {
  const known = STANDING.get(part);
  if (known) return known;
  const m = part.worldFromPart;
  const found = blocksOf(part.shape).map(({ sides, centre, radius }): Standing => {
    const block = sides.map((side): Side => {
      if (!m) return side;
      const normal = turned(m, side.normal);
      return { normal, offset: side.offset + dot(normal, worldOf(part, [0, 0, 0])) };
    });
    return { part, block, centre: worldOf(part, centre), radius, doubles: new WeakMap() };
  });
  STANDING.set(part, found);
  return found;
}

/** The blocks of a stage. */
function blocksOn(stage: SightStage): readonly Standing[] {
  const known = ON_STAGE.get(stage);
  if (known) return known;
  const found = stage.parts.flatMap(standingOf);
  ON_STAGE.set(stage, found);
  return found;
}
