import type { Plan } from '../schema/plan';
import { fitting, isRun, type OpeningSizes } from './addOpening';
import { editRecord } from './editRecord';
import { orSame } from './motion';

/** Changes where an opening lies and how large it is, fitted into its run. */
export function setOpening(
  plan: Plan,
  args: { readonly id: string; readonly openingId: string; readonly patch: Partial<OpeningSizes> },
): Plan {
  return editRecord(plan, args.id, {
    piece: (piece) => {
      if (!isRun(piece) || !piece.openings) return piece;
      const index = piece.openings.findIndex(({ id }) => id === args.openingId);
      const opening = piece.openings[index];
      if (!opening) return piece;
      const next = orSame(opening, { ...opening, ...fitting(piece, { ...opening, ...args.patch }) });
      return next === opening ? piece : { ...piece, openings: piece.openings.with(index, next) };
    },
  });
}
