import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';

/** Closes a hole of a deck. */
export function removeHole(
  plan: Plan,
  { id, holeId }: { readonly id: string; readonly holeId: string },
): Plan {
  return editRecord(plan, id, {
    piece: (piece) => {
      if (piece.kind !== 'deck' || !piece.holes) return piece;
      const { holes, ...rest } = piece;
      const left = holes.filter((hole) => hole.id !== holeId);
      if (left.length === holes.length) return piece;
      return left.length === 0 ? rest : { ...rest, holes: left };
    },
  });
}
