import { atan2, cos, hypot, sin } from '../../units/steadyMath';
import { MOST } from '../edits/limits';
import { tidySpot } from '../edits/tidy';
import { metresBetween } from '../runs';
import type { Performer } from '../schema/cast';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { hasEdges, isFloor } from './edges';
import { floorOf, isClear, type Kept, keptClear } from './hits';
import { fromPiece } from './planar';

/** Round a corner in turns of this at most: the shortest way there is, but for half a thousandth of an arc. Degrees. */
const FINEST_DEGREES = 15;
/** Turns that make fewer places, which are easier to take hold of; taken where the way is hardly longer. Degrees. */
const COARSER_DEGREES = [90, 45, 30] as const;
const HARDLY_LONGER = 1.005;
/** Most obstacles that are looked at, the nearest to the straight way. */
const MOST_OBSTACLES = 400;
/** What is known to keep clear is that much off what it has to, as its places are rounded; metres. */
const SLACK_METRES = 2e-5;

/** Edges that turn by less than this go straight on. */
const STRAIGHT_RADIANS = 1e-9;

/**
 * Places around a convex outline at a distance, so that what joins them touches the rounded outline from outside. Where
 * one of the ends of the walk lies on its round, it sets out from there along the round.
 */
function around(
  { obstacle: { outline }, metres }: Kept,
  turnDegrees: number,
  ends: readonly Spot[],
): readonly Spot[] {
  const count = outline.length;
  /** Which way an edge faces outward, radians from the x axis. */
  const facing = (k: number): number => {
    const [from, to] = [outline[k % count], outline[(k + 1) % count]];
    return atan2(-(to[0] - from[0]), to[1] - from[1]);
  };
  return outline.flatMap((corner, k): readonly Spot[] => {
    const first = facing((k + count - 1) % count);
    let turn = facing(k) - first;
    if (turn < -STRAIGHT_RADIANS) turn += 2 * Math.PI;
    if (turn < STRAIGHT_RADIANS) return [];
    const onRound = ends.flatMap((end): readonly number[] => {
      if (Math.abs(metresBetween(corner, end) - metres) > SLACK_METRES) return [];
      const beyond = atan2(end[1] - corner[1], end[0] - corner[0]) - first;
      const angle = ((beyond % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
      return angle < turn ? [angle] : [];
    });
    const stops = [0, ...onRound.sort((one, next) => one - next), turn];
    return stops.slice(1).flatMap((until, n): readonly Spot[] => {
      const span = until - stops[n];
      if (span < STRAIGHT_RADIANS) return [];
      const steps = Math.max(1, Math.ceil((span * 180) / Math.PI / turnDegrees - STRAIGHT_RADIANS));
      const reach = metres / cos(span / steps / 2);
      return Array.from({ length: steps }, (_, step): Spot => {
        const angle = first + stops[n] + ((step + 0.5) * span) / steps;
        return [corner[0] + cos(angle) * reach, corner[1] + sin(angle) * reach];
      });
    });
  });
}

interface Node {
  readonly at: Spot;
  readonly ahead: number;
  walked: number;
  from: Node | null;
  done: boolean;
}

/** The shortest way over places from the first to the last of them, straight from one to another where that is clear. */
function shortest(places: readonly Spot[], clear: readonly Kept[]): readonly Spot[] | null {
  const goal = places[places.length - 1];
  const nodes = places.map(
    (at): Node => ({ at, ahead: metresBetween(at, goal), walked: Infinity, from: null, done: false }),
  );
  nodes[0].walked = 0;
  const target = nodes[nodes.length - 1];
  for (;;) {
    let next: Node | null = null;
    for (const node of nodes) {
      if (node.done || node.walked === Infinity) continue;
      if (next === null || node.walked + node.ahead < next.walked + next.ahead) next = node;
    }
    if (next === null) return null;
    if (next === target) break;
    next.done = true;
    for (const node of nodes) {
      if (node.done) continue;
      const walked = next.walked + hypot(node.at[0] - next.at[0], node.at[1] - next.at[1]);
      if (walked >= node.walked || walked + node.ahead >= target.walked) continue;
      if (!isClear(next.at, node.at, clear, SLACK_METRES)) continue;
      node.walked = walked;
      node.from = next;
    }
  }
  const way: Spot[] = [];
  for (let node: Node | null = target; node; node = node.from) way.unshift(node.at);
  return way;
}

/**
 * The places of the shortest way from one mark of a performer to another that keeps clear of walls, set pieces and
 * edges (see `keptClear`), to be joined by straight lines; none where the straight walk is clear. Null where there is
 * no such way, or no such mark. By a search over the corners of all that is in the way, rounded as somebody walks
 * round them.
 */
export function clearWay(
  plan: Plan,
  performer: Performer,
  fromMark: string,
  toMark: string,
): readonly Spot[] | null {
  const [from, to] = [fromMark, toMark].map((id) => performer.marks.find((mark) => mark.id === id));
  if (!from || !to) return null;
  const clear = keptClear(plan, from, to);
  if (isClear(from.at, to.at, clear)) return [];
  const floor = floorOf(from, to);
  const near =
    clear.length <= MOST_OBSTACLES
      ? clear
      : clear
          .map((kept) => ({ kept, away: fromPiece(from.at, to.at, kept.obstacle.outline[0]) }))
          .sort((a, b) => a.away - b.away)
          .slice(0, MOST_OBSTACLES)
          .map(({ kept }) => kept);
  const found = (turnDegrees: number): readonly Spot[] | null => {
    const corners = near
      .flatMap((kept) => around(kept, turnDegrees, [from.at, to.at]))
      .map(tidySpot)
      .filter(
        (spot) =>
          (!hasEdges(plan) || isFloor(plan.pieces, spot, floor)) && isClear(spot, spot, near, SLACK_METRES),
      );
    const way = shortest([from.at, ...corners, to.at], near);
    // What was too far off to be looked at may still be in the way.
    return way?.slice(1).every((spot, k) => isClear(way[k], spot, clear)) ? way.slice(1, -1) : null;
  };
  const finest = found(FINEST_DEGREES);
  if (!finest) return null;
  const most = wayMetres(from.at, finest, to.at) * HARDLY_LONGER;
  for (const turnDegrees of COARSER_DEGREES) {
    const way = found(turnDegrees);
    if (way && way.length <= MOST.wayPlaces && wayMetres(from.at, way, to.at) <= most) return way;
  }
  return finest.length <= MOST.wayPlaces ? finest : null;
}

/** How long a way from one place over others to a last is, metres. */
export const wayMetres = (from: Spot, through: readonly Spot[], to: Spot): number =>
  [...through, to].reduce(
    ({ at, metres }, spot) => ({ at: spot, metres: metres + metresBetween(at, spot) }),
    { at: from, metres: 0 },
  ).metres;
