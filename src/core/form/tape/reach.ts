import { isWithin } from '../../plan/areas';
import { metresBetween } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { hasEdges, isFloor } from '../../plan/walkWays/edges';
import { HEADROOM_METRES, lying, obstaclesOn, STEP_METRES } from '../../plan/walkWays/obstacles';
import { between, boundsOf, mayMeet } from '../../plan/walkWays/planar';
import { Squares } from '../../plan/walkWays/squares';
import type { Obstacle } from '../../plan/walkWays/types';

/** What a tape may touch without going through it, metres: it lies along faces and begins at corners. */
const SKIN_METRES = 0.005;

/** So near to its end a tape is asked about first: what a place is shut in by is there, and ends most questions. Metres. */
const NEAR_METRES = 4;

type Lying = Pick<Obstacle, 'outline' | 'bounds'>;

/** A floor, as tapes lie on it. */
export interface TapeFloor {
  /** Whether a tape lies straight between two places. */
  readonly reaches: (from: Spot, to: Spot) => boolean;
  /** Whether something stands on a place, or there is no floor. */
  readonly isTaken: (spot: Spot) => 'off the deck' | 'blocked' | null;
}

/**
 * The floor at a height, metres. A tape goes through nothing that is higher than a step, and over no edge and no hole.
 * Stair houses are solid, whatever room they have within. What somebody stands on or in at the tape's end does not count.
 */
export function tapeFloor(plan: Plan, levelMetres: number): TapeFloor {
  const floor = [levelMetres, levelMetres] as const;
  const obstacles = obstaclesOn(plan, floor);
  const houses = plan.pieces.flatMap((piece) => {
    if (piece.kind !== 'stair house') return [];
    const [width, height, depth] = piece.size;
    const isHere =
      piece.at[1] < levelMetres + HEADROOM_METRES && piece.at[1] + height > levelMetres + STEP_METRES;
    return isHere ? [lying(piece, [-width / 2, width / 2], [-depth / 2, depth / 2])] : [];
  });
  const solids = new Squares<Lying>([
    ...obstacles.filter(({ kind }) => kind === 'solid'),
    ...houses.map((outline) => ({ outline, bounds: boundsOf(outline) })),
  ]);
  const edges = obstacles.filter(({ kind }) => kind !== 'solid');
  const isKnown = hasEdges(plan);
  // What stopped one tape to a place stops most that follow: a place that is shut in is asked about for a whole roof.
  const stopping = new WeakMap<Spot, Lying[]>();
  const stop = (to: Spot, thing: Lying): false => {
    const known = stopping.get(to);
    if (known) known.push(thing);
    else stopping.set(to, [thing]);
    return false;
  };
  return {
    reaches: (from, to) => {
      const meets = ({ outline, bounds }: Lying): boolean =>
        mayMeet(from, to, bounds, 0) && goesThrough(outline, from, to);
      if (stopping.get(to)?.some(meets)) return false;
      const isFree = (thing: Lying): boolean =>
        !meets(thing) || isWithin(thing.outline, to) || stop(to, thing);
      const length = metresBetween(from, to);
      const near = between(to, from, Math.min(1, NEAR_METRES / length));
      return (
        edges.every(
          ({ outline, bounds }) =>
            !mayMeet(from, to, bounds, 0) || !crosses(outline[0], outline[1], from, to),
        ) &&
        solids.every(near, to, 0, isFree) &&
        (length <= NEAR_METRES || solids.every(from, near, 0, isFree))
      );
    },
    isTaken: (spot) => {
      if (isKnown && !isFloor(plan.pieces, spot, floor)) return 'off the deck';
      return solids.every(spot, spot, SKIN_METRES, ({ outline }) => !isWithin(outline, spot))
        ? null
        : 'blocked';
    },
  };
}

/** Twice the area of three places, signed. */
const turn = (a: Spot, b: Spot, c: Spot): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Whether a straight line runs within a convex outline, wound as `fromOutline` has it, deeper than its skin. */
function goesThrough(outline: readonly Spot[], from: Spot, to: Spot): boolean {
  let [enter, leave] = [0, 1];
  for (let k = 0; k < outline.length; k += 1) {
    const [a, b] = [outline[k], outline[(k + 1) % outline.length]];
    const [turnFrom, turnTo] = [turn(a, b, from), turn(a, b, to)];
    if (turnFrom < 0 && turnTo < 0) return false;
    const skin = SKIN_METRES * metresBetween(a, b);
    const [start, end] = [turnFrom - skin, turnTo - skin];
    if (start < 0 && end < 0) return false;
    if (start < 0) enter = Math.max(enter, start / (start - end));
    else if (end < 0) leave = Math.min(leave, start / (start - end));
  }
  return leave > enter;
}

/** Whether two straight lines cross, ends that touch not counted. */
function crosses(a: Spot, b: Spot, c: Spot, d: Spot): boolean {
  const skin = SKIN_METRES * metresBetween(a, b);
  const [one, other] = [turn(a, b, c), turn(a, b, d)];
  if (Math.min(Math.abs(one), Math.abs(other)) <= skin || one > 0 === other > 0) return false;
  return turn(c, d, a) > 0 !== turn(c, d, b) > 0;
}
