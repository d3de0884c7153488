import { cameraAt, spanOf } from '../../optics/camera';
import { isInFrame, projectPoint } from '../../optics/project';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { hasEdges, isFloor } from '../../plan/walkWays/edges';
import { obstaclesOn } from '../../plan/walkWays/obstacles';
import { boundsOf, fromOutline, fromPiece, mayMeet } from '../../plan/walkWays/planar';
import type { Floor, Obstacle } from '../../plan/walkWays/types';
import { isMirroring, wetnessAt } from '../../plan/wetness';
import { walkPieces } from '../places';

/** The ground that cords are laid over, in squares, with what a metre through the middle of each costs. */
export interface Ground {
  /** The corner of the lowest x and z. */
  readonly corner: Spot;
  readonly stepMetres: number;
  readonly columns: number;
  readonly rows: number;
  /** Metres that a metre counts for; infinite where nothing can lie. Row by row from the lowest z. */
  readonly cost: Float64Array;
  /** What no cord goes through or off. */
  readonly obstacles: readonly Obstacle[];
}

/** Squares of this side, metres, or of as much more as keeps their count bounded. */
const STEP_METRES = 0.25;
const MOST_SQUARES = 90000;
/** Beyond what lies on the ground. */
const MARGIN_METRES = 1;

/** So near to a wall or an edge a cord lies along it. Source: common practice, no source */
const ALONG_METRES = 0.75;
/** What a metre counts for in the open, in frame, on somebody's way, and on wet ground: there only where there is no other way. */
const COST = { open: 1.5, inFrame: 4, walked: 8, wet: 1000 } as const;
/** Somebody's way is so wide to either side of its middle, metres. Source: common practice, no source */
const WALK_METRES = 0.45;
/** How often a camera is asked over its span at most. */
const MOST_LOOKS = 16;

/** A cord lies so high over the deck. */
const CORD_METRES = 0.015;

/** The middle of a square. */
export const middleOf = ({ corner, stepMetres, columns }: Ground, square: number): Spot => [
  corner[0] + ((square % columns) + 0.5) * stepMetres,
  corner[1] + (Math.floor(square / columns) + 0.5) * stepMetres,
];

/** The square that a place lies in, the nearest one for a place beside them all. */
export function squareAt({ corner, stepMetres, columns, rows }: Ground, [x, z]: Spot): number {
  const column = Math.min(Math.max(Math.floor((x - corner[0]) / stepMetres), 0), columns - 1);
  const row = Math.min(Math.max(Math.floor((z - corner[1]) / stepMetres), 0), rows - 1);
  return row * columns + column;
}

/** The cameras of all setups as they stand and move, each asked a few times. */
function looksOf(plan: Plan) {
  return plan.setups.flatMap((setup) => {
    const [from, to] = spanOf(plan, setup);
    const count = Math.min(MOST_LOOKS, 1 + Math.ceil(to - from));
    return Array.from({ length: count }, (_, k) =>
      cameraAt(plan, setup, count === 1 ? from : from + ((to - from) * k) / (count - 1)),
    );
  });
}

/**
 * The ground of a floor for cords, between the things that they run between. They keep clear of walls and edges by so much
 * that a straight piece from one square's middle to the next one's cannot cross them, and rather lie along them than in
 * the open; out of the frames of all setups, not asking what stands before them; off the ways of the cast; and off wet
 * ground, so dear that they are led round it wherever there is a way.
 */
export function groundFor(plan: Plan, floor: Floor, spots: readonly Spot[]): Ground {
  const decks = plan.pieces.flatMap((piece) => (piece.kind === 'deck' ? piece.outline : []));
  const [left, near, right, far] = boundsOf(hasEdges(plan) ? [...decks, ...spots] : spots, MARGIN_METRES);
  const [wide, deep] = [right - left, far - near];
  const stepMetres = Math.max(STEP_METRES, Math.sqrt((wide * deep) / MOST_SQUARES));
  const columns = Math.max(1, Math.ceil(wide / stepMetres));
  const rows = Math.max(1, Math.ceil(deep / stepMetres));
  const cost = new Float64Array(columns * rows);
  const obstacles = obstaclesOn(plan, floor);
  const ground: Ground = { corner: [left, near], stepMetres, columns, rows, cost, obstacles };
  /** Half of a square's diagonal and a little more: no step between middles passes nearer to what both keep away from. */
  const keep = stepMetres * 0.75;
  const ways = walkPieces(plan).map(({ piece }) => piece);
  const wetOutlines = (plan.ground.areas ?? []).map(({ outline }) => ({
    outline,
    bounds: boundsOf(outline),
  }));
  const looks = looksOf(plan);
  const knowsFloor = hasEdges(plan);
  for (let square = 0; square < cost.length; square += 1) {
    const at = middleOf(ground, square);
    if (knowsFloor && !isFloor(plan.pieces, at, floor)) {
      cost[square] = Number.POSITIVE_INFINITY;
      continue;
    }
    let nearest = Number.POSITIVE_INFINITY;
    for (const { outline, bounds } of obstacles)
      if (mayMeet(at, at, bounds, ALONG_METRES)) nearest = Math.min(nearest, fromOutline(outline, at, at));
    if (nearest < keep) {
      cost[square] = Number.POSITIVE_INFINITY;
      continue;
    }
    const isWet =
      isMirroring(wetnessAt(plan, at)) ||
      wetOutlines.some(
        ({ outline, bounds }) =>
          mayMeet(at, at, bounds, keep) &&
          outline.some((from, k) => fromPiece(from, outline[(k + 1) % outline.length], at) < keep),
      );
    const isWalked = ways.some(([a, b]) => fromPiece(a, b, at) < WALK_METRES);
    const isSeen = looks.some((camera) => {
      const seen = projectPoint(camera, [at[0], floor[0] + CORD_METRES, at[1]]);
      return seen !== null && isInFrame(seen);
    });
    cost[square] =
      (nearest > ALONG_METRES ? COST.open : 1) +
      (isSeen ? COST.inFrame : 0) +
      (isWalked ? COST.walked : 0) +
      (isWet ? COST.wet : 0);
  }
  return ground;
}
