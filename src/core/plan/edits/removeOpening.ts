import type { Plan } from '../schema/plan';
import { isRun } from './addOpening';
import { editRecord } from './editRecord';

/** Closes an opening of a wall, a parapet or a fence. */
export function removeOpening(
  plan: Plan,
  { id, openingId }: { readonly id: string; readonly openingId: string },
): Plan {
  return editRecord(plan, id, {
    piece: (piece) => {
      if (!isRun(piece) || !piece.openings) return piece;
      const { openings, ...rest } = piece;
      const left = openings.filter((opening) => opening.id !== openingId);
      if (left.length === openings.length) return piece;
      return left.length === 0 ? rest : { ...rest, openings: left };
    },
  });
}
