import { metresBetween } from '../runs';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { surfaceUnder } from '../surfaces';
import { edgesOf, isFloor } from './edges';
import { obstaclesOn } from './obstacles';
import { between, fromOutline, fromPiece, mayMeet, nearestShare } from './planar';
import type { Floor, Obstacle } from './types';

/** What is at least so high at an edge guards it, metres: 42 inches, less the 3 that they may be off. Source: [guardrail] */
export const LEAST_GUARD_METRES = 0.99;
/** An edge so high above what is below it needs a guard, metres: 6 feet. Source: [unprotected-edge] */
export const DROP_METRES = 1.8;
/** A guard may stand so far in from an edge, or out from it, metres. Source: common practice, no source */
const BESIDE_METRES = 0.4;
/** Edges are looked at in pieces of this length, metres. */
const PIECE_METRES = 0.25;

/** A piece of an edge that nothing guards. */
export interface OpenEdge {
  readonly pieceId: string;
  readonly kind: 'edge' | 'hole';
  readonly from: Spot;
  readonly to: Spot;
  /** How high what stands along it is above the floor, metres; 0 for nothing. */
  readonly heldMetres: number;
}

/** A straight edge that has a fall beyond it, whatever guards it. */
interface Fall {
  readonly from: Spot;
  readonly to: Spot;
  readonly metres: number;
  /** All of it, one piece as long as another. */
  readonly pieces: readonly OpenEdge[];
  /** The solids within so many metres of it, found when they are asked for. */
  beside: { readonly metres: number; readonly solids: readonly Obstacle[] };
}

const kept = new WeakMap<Plan['pieces'], Map<string, readonly Fall[]>>();

const isSolid = ({ kind }: Obstacle): boolean => kind === 'solid';
const besideOf = (solids: readonly Obstacle[], { from, to }: Pick<Fall, 'from' | 'to'>, metres: number) =>
  solids.filter(({ bounds }) => mayMeet(from, to, bounds, metres));

/** How high above a floor the highest of some solids is that stands along a place of its edge, metres; 0 for nothing. */
export function heldAlong(solids: readonly Obstacle[], floorMetres: number, place: Spot): number {
  return solids.reduce((highest, { bounds, outline, topMetres }) => {
    const metres = topMetres - floorMetres;
    return metres > highest &&
      mayMeet(place, place, bounds, BESIDE_METRES) &&
      fromOutline(outline, place, place) <= BESIDE_METRES
      ? metres
      : highest;
  }, 0);
}

/** Whether it is less than a fall from an edge to what is beside it. */
function isLow(plan: Plan, [from, to]: readonly Spot[], floor: Floor): boolean {
  const length = metresBetween(from, to);
  const [x, z] = between(from, to, 0.5);
  const aside: Spot = [((to[1] - from[1]) / length) * 0.1, (-(to[0] - from[0]) / length) * 0.1];
  const beyond = [
    [x + aside[0], z + aside[1]],
    [x - aside[0], z - aside[1]],
  ].find(([px, pz]) => !isFloor(plan.pieces, [px, pz], floor));
  if (!beyond) return true;
  const below = surfaceUnder(plan, [beyond[0], beyond[1]], { belowMetres: floor[0] });
  return below.id !== null && floor[0] - below.metres < DROP_METRES;
}

/**
 * The pieces of a floor's edges that have a fall beyond them and no guard of about 1.1 m along them, for somebody whose
 * feet are so much above the floor, as on a ladder: then what stands there has to be as much higher.
 */
export const openEdgesOn = (plan: Plan, floor: Floor, raisedMetres = 0): readonly OpenEdge[] =>
  fallsOn(plan, floor).flatMap(({ pieces }) =>
    pieces.filter(({ heldMetres }) => heldMetres < raisedMetres + LEAST_GUARD_METRES),
  );

/** The edges of a floor that have a fall beyond them. */
function fallsOn(plan: Plan, floor: Floor): readonly Fall[] {
  const byFloor = kept.get(plan.pieces) ?? new Map<string, readonly Fall[]>();
  kept.set(plan.pieces, byFloor);
  const key = floor.join(' ');
  const known = byFloor.get(key);
  if (known) return known;
  // On a box or a roof there are no edges: then it is not asked what stands there.
  const obstacles = edgesOf(plan, floor).length > 0 ? obstaclesOn(plan, floor) : [];
  const solids = obstacles.filter(isSolid);
  const found = obstacles.flatMap((obstacle): Fall[] => {
    const { kind, outline, pieceId, topMetres, bottomMetres } = obstacle;
    if (kind === 'solid' || topMetres - bottomMetres < DROP_METRES || isLow(plan, outline, floor)) return [];
    const [from, to] = outline;
    const beside = besideOf(solids, { from, to }, BESIDE_METRES);
    const metres = metresBetween(from, to);
    const count = Math.max(1, Math.ceil(metres / PIECE_METRES));
    const pieces = Array.from({ length: count }, (_, k): OpenEdge => {
      const [near, far] = [between(from, to, k / count), between(from, to, (k + 1) / count)];
      const heldMetres = heldAlong(beside, floor[1], between(near, far, 0.5));
      return { pieceId, kind, from: near, to: far, heldMetres };
    });
    return [{ from, to, metres, pieces, beside: { metres: BESIDE_METRES, solids: beside } }];
  });
  byFloor.set(key, found);
  return found;
}

/** How near a place is to an edge that nothing guards. */
export interface NearEdge {
  readonly pieceId: string;
  readonly kind: 'edge' | 'hole';
  readonly metres: number;
  /** The nearest place of that edge. */
  readonly at: Spot;
  readonly heldMetres: number;
}

/**
 * The nearest open edge within a distance of a place on a floor, nothing that guards between them; null for none.
 * `raisedMetres` is how much above the floor whoever is there stands.
 */
export function openEdgeNear(
  plan: Plan,
  at: Spot,
  floor: Floor,
  withinMetres: number,
  raisedMetres = 0,
): NearEdge | null {
  const guardMetres = raisedMetres + LEAST_GUARD_METRES;
  let found: NearEdge | null = null;
  for (const fall of fallsOn(plan, floor)) {
    if (fromPiece(fall.from, fall.to, at) > withinMetres + ROUNDING_METRES) continue;
    let guards: readonly Obstacle[] | null = null;
    for (const { pieceId, kind, from, to, heldMetres } of piecesNear(fall, at, withinMetres)) {
      const metres = fromPiece(from, to, at);
      if (heldMetres >= guardMetres || metres > withinMetres || (found && metres >= found.metres)) continue;
      guards ??= solidsNear(plan, floor, fall, withinMetres + PIECE_METRES).filter(
        ({ bounds, topMetres }) =>
          topMetres - floor[1] >= guardMetres && mayMeet(at, at, bounds, withinMetres),
      );
      const middle = between(from, to, 0.5);
      if (guards.some(({ outline }) => fromOutline(outline, at, middle) === 0)) continue;
      found = { pieceId, kind, metres, at: between(from, to, nearestShare(from, to, at)), heldMetres };
    }
  }
  return found;
}

/** What rounding may be off by, metres. */
const ROUNDING_METRES = 1e-6;

/** Those pieces of an edge that may be so near to a place, metres, and perhaps some more. */
function piecesNear({ from, to, metres, pieces }: Fall, at: Spot, withinMetres: number): readonly OpenEdge[] {
  const along = nearestShare(from, to, at) * pieces.length;
  const count = (withinMetres / metres) * pieces.length;
  return pieces.slice(Math.max(0, Math.floor(along - count) - 1), Math.floor(along + count) + 2);
}

/** The solids within so many metres of an edge, and perhaps some more. */
function solidsNear(plan: Plan, floor: Floor, fall: Fall, metres: number): readonly Obstacle[] {
  if (fall.beside.metres < metres)
    fall.beside = { metres, solids: besideOf(obstaclesOn(plan, floor).filter(isSolid), fall, metres) };
  return fall.beside.solids;
}
