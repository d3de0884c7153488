import { areaOf } from '../../core/plan/areas';
import { itemOf } from '../../core/plan/items';
import { bearingOf, metresBetween, runLength } from '../../core/plan/runs';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';

/** The numbers of what is being drawn; null where it has none. */
export interface StrokeFigures {
  /** The leg that the hand draws. */
  readonly legMetres: number | null;
  readonly bearingDegrees: number | null;
  /** All legs with that one. */
  readonly totalMetres: number;
  /** Of an outline, closed as it would be. */
  readonly areaSquareMetres: number | null;
  /** Of a fence: how many bays the leg has, and how long each is. */
  readonly bays: { readonly count: number; readonly metres: number } | null;
}

/** Reads the numbers off the corners and the place of the next one; `postEveryMetres` is that of a fence. */
export function strokeFigures(
  corners: readonly Spot[],
  next: Spot | null,
  of: { readonly outline: boolean; readonly postEveryMetres: number | null },
): StrokeFigures {
  const last = corners.at(-1) ?? null;
  const path = next ? [...corners, next] : [...corners];
  const legMetres = last && next ? metresBetween(last, next) : null;
  return {
    legMetres,
    bearingDegrees: last && next && legMetres !== null && legMetres > 0 ? bearingOf(last, next) : null,
    totalMetres: runLength(path, false),
    areaSquareMetres: of.outline && path.length >= 3 ? areaOf(path) : null,
    bays: legMetres !== null && of.postEveryMetres !== null ? baysOf(legMetres, of.postEveryMetres) : null,
  };
}

/** Bays of a leg: as few as keep its posts no farther apart than they may stand. */
function baysOf(metres: number, atMost: number): { count: number; metres: number } | null {
  if (metres <= 0) return null;
  const count = Math.max(1, Math.ceil(metres / atMost - 1e-9));
  return { count, metres: metres / count };
}

/** How far apart the posts of a drafted fence stand at most, metres; null for anything else. */
export function postEvery(plan: Plan, id: string | null): number | null {
  const record = id === null ? undefined : itemOf(plan, id)?.record;
  return record && 'postEveryMetres' in record ? record.postEveryMetres : null;
}
