import { metresBetween } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import { acos } from '../../units/steadyMath';
import type { Anchor } from './anchor';
import { costOf, type NearAnchors } from './nearAnchors';
import type { TapeFloor } from './reach';

/** Where the two tapes would also meet: there is no roof, something stands there, or one has to be told which side. */
export type Mirror = 'off the deck' | 'blocked' | 'possible';

/** Two anchors, and how well their tapes tell a place. */
export interface AnchorPair {
  readonly anchors: readonly [Anchor, Anchor];
  /** The angle at which the tapes cross, 0 to 180 degrees. */
  readonly crossingDegrees: number;
  /** How far off the place may be where each tape is read a centimetre wrong, metres. */
  readonly withinMetres: number;
  readonly mirrored: Spot;
  readonly mirror: Mirror;
}

/** What a tape may be read wrong by, metres. Source: common practice, no source */
const READ_METRES = 0.01;
/** Tapes that cross more narrowly tell a place badly, degrees. Source: common practice, no source */
const NARROWEST_DEGREES = 30;
/** So many of the nearest anchors within reach are tried by twos. */
const MOST_TRIED = 24;
/** What a doubling of the error is worth in metres of tape, and having to tell the side. Source: common practice, no source */
const METRES_PER_DOUBLING = 4;
const METRES_PER_SIDE = 1.5;
/** Nearer than this to its anchor a tape has no direction, metres. */
const LEAST_METRES = 0.05;
/** Sums of costs may be off by this, metres. */
const ROUNDING = 1e-9;
/** Least error of two tapes, those that cross square: √2. */
const SQUARE_ERROR = Math.SQRT2;

/** A pair, and by what it is held against others. */
interface Tried {
  readonly pair: AnchorPair;
  readonly isNarrow: boolean;
  readonly cost: number;
  /** Which of the anchors that are reached the first of the two is, counted from the one that costs least. */
  readonly place: number;
}

/**
 * Chooses two of the anchors that a tape reaches a place from: such that the tapes cross near a right angle and are
 * short, and that the other place where they would meet is off the roof or taken. Null where fewer than two are there,
 * or all lie in one line with it.
 */
export function bestPair(
  floor: TapeFloor,
  at: Spot,
  anchors: NearAnchors,
  exceptId: string,
): AnchorPair | null {
  const reached: Anchor[] = [];
  let best: Tried | null = null;
  for (const anchor of anchors.byCost(at)) {
    // Those that follow cost more by themselves than the best pair does: on a large roof they are most of all.
    if (best && !best.isNarrow && costOf(reached[0], at) + costOf(anchor, at) > best.cost + ROUNDING) break;
    if (anchor.pieceId === exceptId || metresBetween(anchor.at, at) < LEAST_METRES) continue;
    if (!isReached(floor, anchor, at)) continue;
    for (let k = 0; k < reached.length; k += 1) best = betterWith(best, floor, at, [reached[k], anchor], k);
    if (reached.push(anchor) === MOST_TRIED) break;
  }
  return best?.pair ?? null;
}

/** The better of the best pair until now and another one; of two that are as good, the one whose first anchor costs less. */
function betterWith(
  best: Tried | null,
  floor: TapeFloor,
  at: Spot,
  anchors: readonly [Anchor, Anchor],
  place: number,
): Tried | null {
  const crossing = crossingOf(at, anchors);
  if (!crossing) return best;
  const { crossingDegrees } = crossing;
  const isNarrow = crossingDegrees < NARROWEST_DEGREES || crossingDegrees > 180 - NARROWEST_DEGREES;
  const isBetter = (cost: number): boolean => {
    if (!best || best.isNarrow !== isNarrow) return !best || best.isNarrow;
    return cost < best.cost || (cost === best.cost && place < best.place);
  };
  const cost = crossingCost(crossing, at);
  // What is at the mirrored place takes long to find, and can only make a pair worse.
  if (!isBetter(cost)) return best;
  const pair = { ...crossing, mirror: mirrorAt(floor, crossing) };
  const whole = cost + (pair.mirror === 'possible' ? METRES_PER_SIDE : 0);
  return isBetter(whole) ? { pair, isNarrow, cost: whole, place } : best;
}

/** Whether a tape lies from an anchor to a place; from a post it begins at its rim. */
function isReached(floor: TapeFloor, { at, withinMetres }: Anchor, to: Spot): boolean {
  const share = withinMetres / metresBetween(at, to);
  if (share >= 1) return true;
  return floor.reaches([at[0] + (to[0] - at[0]) * share, at[1] + (to[1] - at[1]) * share], to);
}

function crossingCost({ anchors: [one, other], withinMetres }: Crossing, at: Spot): number {
  const error = withinMetres / (READ_METRES * SQUARE_ERROR) - 1;
  return costOf(one, at) + costOf(other, at) + METRES_PER_DOUBLING * error;
}

type Crossing = Omit<AnchorPair, 'mirror'>;

/** How two tapes cross at a place; null where they lie in one line, or begin at one place. */
function crossingOf(at: Spot, anchors: readonly [Anchor, Anchor]): Crossing | null {
  const [a, b] = [anchors[0].at, anchors[1].at];
  const [da, db, base] = [metresBetween(a, at), metresBetween(b, at), metresBetween(a, b)];
  if (base < LEAST_METRES) return null;
  const cosine = (da * da + db * db - base * base) / (2 * da * db);
  const across = 1 - cosine * cosine;
  if (across < 1e-6) return null;
  return {
    anchors,
    crossingDegrees: (acos(cosine) * 180) / Math.PI,
    // The farthest corner of the lozenge in which both tapes read within a centimetre.
    withinMetres: READ_METRES * Math.sqrt((2 + 2 * Math.abs(cosine)) / across),
    mirrored: reflected(at, a, b),
  };
}

/** The place on the other side of a straight line, as far from both of its ends. */
function reflected(at: Spot, a: Spot, b: Spot): Spot {
  const [dx, dz] = [b[0] - a[0], b[1] - a[1]];
  const share = ((at[0] - a[0]) * dx + (at[1] - a[1]) * dz) / (dx * dx + dz * dz);
  return [2 * (a[0] + share * dx) - at[0], 2 * (a[1] + share * dz) - at[1]];
}

function mirrorAt(floor: TapeFloor, { mirrored, anchors }: Crossing): Mirror {
  const taken = floor.isTaken(mirrored);
  if (taken) return taken;
  return anchors.every((anchor) => isReached(floor, anchor, mirrored)) ? 'possible' : 'blocked';
}
