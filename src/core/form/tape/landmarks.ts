import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { thingName } from '../../plan/snap/names';

/** Something on the roof that everybody sees and that stays, by which a side is told. */
export interface Landmark {
  readonly pieceId: string;
  /** Within a sentence: `the stair house`. */
  readonly name: string;
  readonly at: Spot;
}

const KINDS: ReadonlySet<string> = new Set(['stair house', 'shed', 'tank', 'chimney', 'post']);

const kept = new WeakMap<Plan['pieces'], readonly Landmark[]>();

/**
 * The set pieces of a plan that a side is told by, without those whose name another one has too. The same list for the
 * same set pieces.
 */
export function landmarksOf(plan: Plan): readonly Landmark[] {
  const known = kept.get(plan.pieces);
  if (known) return known;
  const seen = plan.pieces.flatMap((piece): Landmark[] =>
    'at' in piece && KINDS.has(piece.kind) && !piece.hidden
      ? [{ pieceId: piece.id, name: thingName(piece.label), at: [piece.at[0], piece.at[2]] }]
      : [],
  );
  const counts = new Map<string, number>();
  for (const { name } of seen) counts.set(name, (counts.get(name) ?? 0) + 1);
  const found = seen.filter(({ name }) => counts.get(name) === 1);
  kept.set(plan.pieces, found);
  return found;
}
