import { metresBetween } from '../runs';
import type { Mark } from '../schema/cast';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { surfaceOfFoot } from '../surfaces';
import { isFloor } from './edges';
import { obstaclesOn } from './obstacles';
import { between, fromOutline, mayMeet } from './planar';
import type { Floor, Obstacle } from './types';

/** Half the breadth of somebody's shoulders, metres. Source: common practice, no source */
export const SHOULDER_METRES = 0.25;
/** So much nearer than it may be is a matter of rounding, metres. */
const SLACK_METRES = 1e-4;

/** An obstacle as a walk between two places has it: how far away the walk's middle has to stay. */
export interface Kept {
  readonly obstacle: Obstacle;
  readonly metres: number;
}

/** The floor of a walk from one mark to another. */
export const floorOf = (from: Mark, to: Mark): Floor => {
  const [a, b] = [from.floorMetres ?? 0, to.floorMetres ?? 0];
  return [Math.min(a, b), Math.max(a, b)];
};

/**
 * What a walk between two marks keeps clear of, and by how much: half the shoulders, or less where the performer stands
 * nearer to it at one of the marks, as somebody does who leans on a parapet. What they stand on or in is left out, and
 * so are edges where a mark is off the floor.
 */
export function keptClear(plan: Plan, from: Mark, to: Mark): readonly Kept[] {
  const floor = floorOf(from, to);
  const stoodOn = new Set(
    [from, to].map(({ at, floorMetres = 0 }) => surfaceOfFoot(plan, at, floorMetres)?.id ?? ''),
  );
  const onFloor = [from, to].every(({ at }) => isFloor(plan.pieces, at, floor));
  return obstaclesOn(plan, floor).flatMap((obstacle): Kept[] => {
    if (obstacle.kind === 'solid' ? stoodOn.has(obstacle.pieceId) : !onFloor) return [];
    const metres = [from.at, to.at].reduce(
      (least, at) =>
        mayMeet(at, at, obstacle.bounds, SHOULDER_METRES)
          ? Math.min(least, fromOutline(obstacle.outline, at, at))
          : least,
      SHOULDER_METRES,
    );
    return metres === 0 && obstacle.kind === 'solid' ? [] : [{ obstacle, metres }];
  });
}

/** Whether a straight walk from a to b stays clear of all that it has to. */
export const isClear = (a: Spot, b: Spot, clear: readonly Kept[], slackMetres = SLACK_METRES): boolean =>
  clear.every(
    ({ obstacle: { bounds, outline }, metres }) =>
      !mayMeet(a, b, bounds, metres) || fromOutline(outline, a, b) >= metres - slackMetres,
  );

/** Something that a walk goes through, over or off. */
export interface WalkHit {
  readonly pieceId: string;
  /** *Over* what reaches no higher than the hips. */
  readonly how: 'through' | 'over' | 'off the edge' | 'into a hole';
  /** Where it is first met, and how far along the walk that is, metres. */
  readonly at: Spot;
  readonly alongMetres: number;
}

/** As high as this above the floor one climbs over it, metres. Source: common practice, no source */
const HIPS_METRES = 1.2;

function howOf({ kind, topMetres }: Obstacle, [lowest]: Floor): WalkHit['how'] {
  if (kind === 'edge') return 'off the edge';
  if (kind === 'hole') return 'into a hole';
  return topMetres - lowest <= HIPS_METRES ? 'over' : 'through';
}

/** A piece of a walk of 10 km is halved so often to know a place on it to a millimetre. */
const HALVINGS = 24;

/** Where along a straight piece that comes too near it first does, as a share of it. */
function firstShare(a: Spot, b: Spot, outline: readonly Spot[], metres: number): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (fromOutline(outline, a, between(a, b, middle)) < metres) high = middle;
    else low = middle;
  }
  return high;
}

/**
 * What a walk along a path of straight pieces goes through, over or off, in the order in which it is met, each set piece
 * once. A body is half its shoulders wide to either side; an edge counts where the middle of the walk crosses it.
 */
export function walkHits(plan: Plan, from: Mark, to: Mark, path: readonly Spot[]): readonly WalkHit[] {
  const floor = floorOf(from, to);
  const found = new Map<string, WalkHit>();
  const clear = keptClear(plan, from, to);
  let before = 0;
  for (let k = 0; k + 1 < path.length; k += 1) {
    const [a, b] = [path[k], path[k + 1]];
    for (const { obstacle, metres } of clear) {
      const { kind, outline, bounds, pieceId } = obstacle;
      const least = kind === 'solid' ? metres - SLACK_METRES : SLACK_METRES;
      if (metres < SLACK_METRES || !mayMeet(a, b, bounds, least) || fromOutline(outline, a, b) >= least)
        continue;
      const share = firstShare(a, b, outline, least);
      const alongMetres = before + metresBetween(a, b) * share;
      const known = found.get(pieceId);
      if (!known || known.alongMetres > alongMetres)
        found.set(pieceId, { pieceId, how: howOf(obstacle, floor), at: between(a, b, share), alongMetres });
    }
    before += metresBetween(a, b);
  }
  return [...found.values()].sort((a, b) => a.alongMetres - b.alongMetres);
}

/** The set piece that a mark lies in, through whatever is there on its floor; null for none. */
export function pieceAround(plan: Plan, { at, floorMetres = 0 }: Mark): string | null {
  const stoodOn = surfaceOfFoot(plan, at, floorMetres)?.id;
  const around = obstaclesOn(plan, [floorMetres, floorMetres]).find(
    ({ kind, pieceId, outline, bounds }) =>
      kind === 'solid' &&
      pieceId !== stoodOn &&
      mayMeet(at, at, bounds, 0) &&
      fromOutline(outline, at, at) === 0,
  );
  return around?.pieceId ?? null;
}
