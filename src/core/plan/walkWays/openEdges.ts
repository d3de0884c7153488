import { metresBetween } from '../runs';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { surfaceUnder } from '../surfaces';
import { isFloor } from './edges';
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

const kept = new WeakMap<Plan['pieces'], Map<string, readonly OpenEdge[]>>();

/** What guards somebody who stands so much above the floor. */
const guardsOn = (plan: Plan, floor: Floor, raisedMetres: number): readonly Obstacle[] =>
  obstaclesOn(plan, floor).filter(
    ({ kind, topMetres }) => kind === 'solid' && topMetres - floor[1] >= raisedMetres + LEAST_GUARD_METRES,
  );

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
  edgesWithFall(plan, floor).filter(({ heldMetres }) => heldMetres < raisedMetres + LEAST_GUARD_METRES);

/** The pieces of a floor's edges that have a fall beyond them, whatever guards them. */
function edgesWithFall(plan: Plan, floor: Floor): readonly OpenEdge[] {
  const byFloor = kept.get(plan.pieces) ?? new Map<string, readonly OpenEdge[]>();
  kept.set(plan.pieces, byFloor);
  const key = floor.join(' ');
  const known = byFloor.get(key);
  if (known) return known;
  const solids = obstaclesOn(plan, floor).filter(({ kind }) => kind === 'solid');
  const found = obstaclesOn(plan, floor).flatMap((obstacle): OpenEdge[] => {
    const { kind, outline, pieceId, topMetres, bottomMetres } = obstacle;
    if (kind === 'solid' || topMetres - bottomMetres < DROP_METRES || isLow(plan, outline, floor)) return [];
    const [from, to] = outline;
    const beside = solids.filter(({ bounds }) => mayMeet(from, to, bounds, BESIDE_METRES));
    const count = Math.max(1, Math.ceil(metresBetween(from, to) / PIECE_METRES));
    return Array.from({ length: count }, (_, k): OpenEdge => {
      const [near, far] = [between(from, to, k / count), between(from, to, (k + 1) / count)];
      const heldMetres = heldAlong(beside, floor[1], between(near, far, 0.5));
      return { pieceId, kind, from: near, to: far, heldMetres };
    });
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
  let found: NearEdge | null = null;
  const guards = guardsOn(plan, floor, raisedMetres).filter(({ bounds }) =>
    mayMeet(at, at, bounds, withinMetres),
  );
  for (const { pieceId, kind, from, to, heldMetres } of openEdgesOn(plan, floor, raisedMetres)) {
    const metres = fromPiece(from, to, at);
    if (metres > withinMetres || (found !== null && metres >= found.metres)) continue;
    const middle = between(from, to, 0.5);
    if (guards.some(({ outline }) => fromOutline(outline, at, middle) === 0)) continue;
    found = { pieceId, kind, metres, at: between(from, to, nearestShare(from, to, at)), heldMetres };
  }
  return found;
}
