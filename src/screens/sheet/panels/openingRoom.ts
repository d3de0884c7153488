import { runLength } from '../../../core/plan/runs';
import type { Opening, Piece } from '../../../core/plan/schema/pieces';

type Run = Extract<Piece, { openings?: unknown }>;
type Sizes = Omit<Opening, 'id'>;

/** A door leaf with its frame. Source: common practice, no source */
const DOOR: Pick<Sizes, 'widthMetres' | 'heightMetres'> = { widthMetres: 0.9, heightMetres: 2.1 };

const SMALLEST_METRES = 0.001;

/** The least and the most that one length of an opening may have for it to stay within its run, metres. */
export function openingRoom(run: Run, opening: Sizes, key: keyof Sizes): readonly [number, number] {
  const length = runLength(run.path, run.closed);
  switch (key) {
    case 'widthMetres':
      return [SMALLEST_METRES, length];
    case 'alongMetres':
      return run.closed ? [0, length] : [opening.widthMetres / 2, length - opening.widthMetres / 2];
    case 'sillMetres':
      return [0, run.heightMetres - SMALLEST_METRES];
    case 'heightMetres':
      return [SMALLEST_METRES, Math.max(run.heightMetres - opening.sillMetres, SMALLEST_METRES)];
  }
}

/** A door in the middle of the widest stretch that has no opening yet, no larger than the run. */
export function newOpening(run: Run, length: number): Sizes {
  const heightMetres = Math.min(DOOR.heightMetres, run.heightMetres);
  const taken = (run.openings ?? [])
    .map(
      ({ alongMetres, widthMetres }) =>
        [alongMetres - widthMetres / 2, alongMetres + widthMetres / 2] as const,
    )
    .toSorted((a, b) => a[0] - b[0]);
  let [from, to] = [0, 0];
  let start = 0;
  for (const [low, high] of [...taken, [length, length] as const]) {
    if (low - start > to - from) [from, to] = [start, low];
    start = Math.max(start, high);
  }
  const room = to - from > 0 ? to - from : length;
  return {
    alongMetres: (from + to) / 2,
    widthMetres: Math.min(DOOR.widthMetres, room),
    sillMetres: 0,
    heightMetres,
  };
}
