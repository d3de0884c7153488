import { areaOf } from '../../core/plan/areas';
import { bearingOf, metresBetween, runLength } from '../../core/plan/runs';
import type { Spot } from '../../core/plan/schema/numbers';

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

/** Where the posts of a fence stand along the corners of its path, each corner among them. */
export function postsAlong(path: readonly Spot[], atMost: number): readonly Spot[] {
  const legs = path.slice(1).map((to, index) => ({ from: path[index], to }));
  return [
    ...path.slice(0, 1),
    ...legs.flatMap(({ from, to }) => {
      const count = baysOf(metresBetween(from, to), atMost)?.count ?? 1;
      return Array.from({ length: count }, (_, bay): Spot => {
        const share = (bay + 1) / count;
        return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
      });
    }),
  ];
}
