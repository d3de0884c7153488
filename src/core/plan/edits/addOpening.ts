import { runLength } from '../runs';
import type { Opening, Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { freeId } from './freeId';
import { MOST } from './limits';
import { kept, tidyMetres } from './tidy';

export type OpenedRun = Extract<Piece, { readonly openings?: unknown }>;
/** An opening without its id. */
export type OpeningSizes = Omit<Opening, 'id'>;

const SMALLEST_METRES = 0.001;
const LARGEST_METRES = 500;

export const isRun = (piece: Piece): piece is OpenedRun =>
  piece.kind === 'wall' || piece.kind === 'parapet' || piece.kind === 'fence';

/** An opening that fits its run: no wider than that, its sides within it, and within what a plan may hold. */
export function fitting(run: OpenedRun, sizes: OpeningSizes): OpeningSizes {
  const length = runLength(run.path, run.closed);
  const widthMetres = kept(tidyMetres(sizes.widthMetres), SMALLEST_METRES, Math.min(length, LARGEST_METRES));
  const half = run.closed ? 0 : Math.min(widthMetres, length) / 2;
  return {
    alongMetres: kept(tidyMetres(kept(sizes.alongMetres, half, length - half)), 0, LARGEST_METRES),
    widthMetres: Math.max(tidyMetres(widthMetres), SMALLEST_METRES),
    sillMetres: kept(tidyMetres(sizes.sillMetres), 0, LARGEST_METRES),
    heightMetres: kept(tidyMetres(sizes.heightMetres), SMALLEST_METRES, LARGEST_METRES),
  };
}

/** Makes an opening in a wall, a parapet or a fence, fitted into the run; other things stay. */
export function addOpening(plan: Plan, { id, ...sizes }: { readonly id: string } & OpeningSizes): Plan {
  return editRecord(plan, id, {
    piece: (piece) => {
      if (!isRun(piece)) return piece;
      const openings = piece.openings ?? [];
      if (openings.length >= MOST.openings) return piece;
      const opening = { id: freeId(openings, 'opening'), ...fitting(piece, sizes) };
      return { ...piece, openings: [...openings, opening] };
    },
  });
}
