import { hypot, tan } from '../units/steadyMath';
import { inOwnFrame, isWithin } from './areas';
import { itemOf } from './items';
import type { Performer } from './schema/cast';
import type { Gear } from './schema/gear';
import type { Spot } from './schema/numbers';
import type { Piece } from './schema/pieces';
import type { Plan } from './schema/plan';
import { type Bounds, boundsOf } from './walkWays/planar';
import { Squares } from './walkWays/squares';

/** What one may stand on, and how high it is there. */
export interface Surface {
  readonly metres: number;
  /** The set piece; null where there is none, and the height is that of the deck's zero. */
  readonly id: string | null;
}

/** Which surfaces count. */
export interface SurfaceOptions {
  /** Set pieces that are looked through, by their ids. */
  readonly except?: ReadonlySet<string>;
  /** Only what lies no higher than this, metres. */
  readonly belowMetres?: number;
}

/** How far off a foot may be and still stand, metres: what a typed height leaves. */
export const STANDING_METRES = 0.02;

/** The roof slab of a stair house lies this far below the top of its coping, as its form has it. */
const COPING_METRES = 0.08;
const COPING_SHARE = 0.04;
/** The fall of a shed's roof from front to back, as its form has it. */
const SHED_FALL = tan((5 * Math.PI) / 180);

/** Whether a place lies in the rectangle around a standing thing, so much wider on each side. */
function isOver(
  piece: Extract<Piece, { readonly size: unknown }>,
  [right, back]: Spot,
  overhangMetres: number,
): boolean {
  const [width, , depth] = piece.size;
  return (
    Math.abs(right) <= width / 2 + overhangMetres + 1e-9 &&
    Math.abs(back) <= depth / 2 + overhangMetres + 1e-9
  );
}

/** How high a set piece can be stood on at a place, metres; null where it cannot. */
export function topAt(piece: Piece, spot: Spot): number | null {
  switch (piece.kind) {
    case 'deck': {
      const isHole = (piece.holes ?? []).some((hole) => isWithin(hole.outline, spot, false));
      return !isHole && isWithin(piece.outline, spot) ? piece.topMetres : null;
    }
    case 'box':
    case 'riser': {
      const own = inOwnFrame(piece.at, piece.headingDegrees, spot);
      return isOver(piece, own, 0) ? piece.at[1] + piece.size[1] : null;
    }
    case 'stair house': {
      const own = inOwnFrame(piece.at, piece.headingDegrees, spot);
      const coping = Math.min(COPING_METRES, piece.size[1] * COPING_SHARE);
      return isOver(piece, own, piece.overhangMetres) ? piece.at[1] + piece.size[1] - coping : null;
    }
    case 'shed': {
      const own = inOwnFrame(piece.at, piece.headingDegrees, spot);
      if (!isOver(piece, own, piece.overhangMetres)) return null;
      const [, height, depth] = piece.size;
      const reach = depth + 2 * piece.overhangMetres;
      const slope = Math.min(SHED_FALL, (height * 0.25) / reach);
      return piece.at[1] + height - slope * (own[1] + reach / 2);
    }
    default:
      return null;
  }
}

/** A set piece that can be stood on somewhere, and its place in the plan. */
interface Standable {
  readonly piece: Piece;
  readonly place: number;
  readonly bounds: Bounds;
}

/** What no place outside of is over a set piece; null for what nobody stands on. */
function standingBounds(piece: Piece): Bounds | null {
  switch (piece.kind) {
    case 'deck':
      return boundsOf(piece.outline, STANDING_METRES);
    case 'box':
    case 'riser':
    case 'stair house':
    case 'shed': {
      const [width, , depth] = piece.size;
      const over = 'overhangMetres' in piece ? piece.overhangMetres : 0;
      const reach = hypot(width / 2 + over, depth / 2 + over) + STANDING_METRES;
      return boundsOf([[piece.at[0], piece.at[2]]], reach);
    }
    default:
      return null;
  }
}

const kept = new WeakMap<readonly Piece[], Squares<Standable>>();

/** What can be stood on, by where it is; the same for the same set pieces. */
function standables(pieces: readonly Piece[]): Squares<Standable> {
  const known = kept.get(pieces);
  if (known) return known;
  const found = new Squares(
    pieces.flatMap((piece, place): Standable[] => {
      const bounds = standingBounds(piece);
      return bounds ? [{ piece, place, bounds }] : [];
    }),
  );
  kept.set(pieces, found);
  return found;
}

/** Whether some set piece can be stood on at a place, at a height, metres, that is as asked. */
export const isStoodOn = (
  pieces: readonly Piece[],
  spot: Spot,
  isRight: (topMetres: number) => boolean,
): boolean =>
  !standables(pieces).every(spot, spot, 0, ({ piece }) => {
    const top = topAt(piece, spot);
    return top === null || !isRight(top);
  });

/** The highest of what one may stand on at a place [x, z]: deck, box, riser, roof of a stair house or a shed. */
export function surfaceUnder(plan: Plan, spot: Spot, options: SurfaceOptions = {}): Surface {
  const { metres, piece } = pieceUnder(plan, spot, options);
  return { metres, id: piece?.id ?? null };
}

/** The same with its record; null where there is none. */
export function pieceUnder(
  plan: Plan,
  spot: Spot,
  options: SurfaceOptions = {},
): { readonly metres: number; readonly piece: Piece | null } {
  const highest = options.belowMetres ?? Number.POSITIVE_INFINITY;
  let found: { readonly metres: number; readonly piece: Piece | null } = { metres: 0, piece: null };
  let foundPlace = 0;
  standables(plan.pieces).every(spot, spot, 0, ({ piece, place }) => {
    if (options.except?.has(piece.id)) return true;
    const metres = topAt(piece, spot);
    if (metres === null || metres > highest) return true;
    // Of those that are as high, the first in the plan.
    const isBetter =
      found.piece === null || metres > found.metres || (metres === found.metres && place < foundPlace);
    if (isBetter) [found, foundPlace] = [{ metres, piece }, place];
    return true;
  });
  return found;
}

/** What a foot at a height over a place stands on; null where it stands on nothing and hangs. */
export function surfaceOfFoot(
  plan: Plan,
  spot: Spot,
  footMetres: number,
  except?: ReadonlySet<string>,
): Surface | null {
  const surface = surfaceUnder(plan, spot, {
    belowMetres: footMetres + STANDING_METRES,
    ...(except && { except }),
  });
  return Math.abs(footMetres - surface.metres) <= STANDING_METRES ? surface : null;
}

/** Where a thing has its one foot, metres: null for runs, lines, cast, what hangs on a stand, and what is not there. */
export function footOf(plan: Plan, id: string): { readonly spot: Spot; readonly metres: number } | null {
  const record = itemOf(plan, id)?.record;
  return record ? footOfRecord(record) : null;
}

/** The same of a record. */
export function footOfRecord(
  record: Piece | Gear | Performer,
): { readonly spot: Spot; readonly metres: number } | null {
  const at = 'at' in record ? record.at : 'place' in record && 'at' in record.place ? record.place.at : null;
  return at ? { spot: [at[0], at[2]], metres: at[1] } : null;
}
