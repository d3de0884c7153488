import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { thingName } from '../../plan/snap/names';
import { type Bounds, boundsOf } from '../../plan/walkWays/planar';
import { Squares } from '../../plan/walkWays/squares';

/** Something on the roof that everybody sees and that stays, by which a side is told. */
export interface Landmark {
  readonly pieceId: string;
  /** Within a sentence: `the stair house`. */
  readonly name: string;
  readonly at: Spot;
}

const KINDS: ReadonlySet<string> = new Set(['stair house', 'shed', 'tank', 'chimney', 'post']);

interface Landmarks {
  readonly all: readonly Landmark[];
  /** By where they stand, with their place in the list. */
  readonly squares: Squares<{ readonly landmark: Landmark; readonly place: number; readonly bounds: Bounds }>;
}

const kept = new WeakMap<Plan['pieces'], Landmarks>();

/**
 * The set pieces of a plan that a side is told by, without those whose name another one has too. The same list for the
 * same set pieces.
 */
export const landmarksOf = (plan: Plan): readonly Landmark[] => found(plan).all;

/** Those of them within so many metres of a place, in their order, and perhaps some that are farther off. */
export function landmarksNear(plan: Plan, at: Spot, metres: number): readonly Landmark[] {
  const near: { readonly landmark: Landmark; readonly place: number }[] = [];
  found(plan).squares.every(at, at, metres, (each) => near.push(each) > 0);
  return near.sort((a, b) => a.place - b.place).map(({ landmark }) => landmark);
}

function found(plan: Plan): Landmarks {
  const known = kept.get(plan.pieces);
  if (known) return known;
  const seen = plan.pieces.flatMap((piece): Landmark[] =>
    'at' in piece && KINDS.has(piece.kind) && !piece.hidden
      ? [{ pieceId: piece.id, name: thingName(piece.label), at: [piece.at[0], piece.at[2]] }]
      : [],
  );
  const counts = new Map<string, number>();
  for (const { name } of seen) counts.set(name, (counts.get(name) ?? 0) + 1);
  const all = seen.filter(({ name }) => counts.get(name) === 1);
  const squares = new Squares(
    all.map((landmark, place) => ({ landmark, place, bounds: boundsOf([landmark.at]) })),
  );
  kept.set(plan.pieces, { all, squares });
  return { all, squares };
}
