import { itemOf } from '../../core/plan/items';
import { alongOf, metresBetween, runLength, spotAlong } from '../../core/plan/runs';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Piece } from '../../core/plan/schema/pieces';
import type { Plan } from '../../core/plan/schema/plan';

/** A run that a way through can be made in. */
export type Opened = Extract<Piece, { kind: 'wall' | 'parapet' | 'fence' }>;

/** A door's clear width and height, where nobody said another. Source: common practice, no source. */
export const DOOR_WIDTH_METRES = 0.9;
const DOOR_HEIGHT_METRES = 2.1;

/** An opening as it would be made. */
export interface OpeningAt {
  readonly alongMetres: number;
  readonly widthMetres: number;
  readonly sillMetres: number;
  readonly heightMetres: number;
  /** Its two jambs on the line of the run, metres. */
  readonly jambs: readonly [Spot, Spot];
}

/** The run of that id, where it is one that takes openings. */
export function openedRun(plan: Plan, id: string): Opened | null {
  const record = itemOf(plan, id)?.record;
  const takesThem =
    record &&
    'kind' in record &&
    (record.kind === 'wall' || record.kind === 'parapet' || record.kind === 'fence');
  return takesThem ? record : null;
}

/** The run nearest to a place within reach, of those that take openings; hidden and locked ones are left alone. */
export function runNear(plan: Plan, at: Spot, reachMetres: number): Opened | null {
  let found: Opened | null = null;
  let nearest = reachMetres;
  for (const piece of plan.pieces) {
    const run = piece.hidden || piece.locked ? null : openedRun(plan, piece.id);
    if (!run) continue;
    const away = metresBetween(at, spotAlong(run.path, run.closed, alongOf(run.path, run.closed, at)).spot);
    if (away > nearest) continue;
    nearest = away;
    found = run;
  }
  return found;
}

/**
 * An opening of a run around the place nearest to `at`; from jamb to jamb where `from` says where the first one is.
 * It stays within the run; null where the run is shorter than it.
 */
export function openingAt(
  run: Opened,
  at: Spot,
  options: { readonly from?: Spot | null; readonly widthMetres?: number | null },
): OpeningAt | null {
  const length = runLength(run.path, run.closed);
  const along = alongOf(run.path, run.closed, at);
  const first = options.from ? alongOf(run.path, run.closed, options.from) : null;
  const drawn = first === null ? 0 : Math.abs(along - first);
  const widthMetres = options.widthMetres ?? (drawn > 0 ? drawn : DOOR_WIDTH_METRES);
  if (widthMetres > length) return null;
  const wanted = first === null || drawn === 0 ? along : first + (Math.sign(along - first) * widthMetres) / 2;
  const middle = Math.min(Math.max(wanted, widthMetres / 2), length - widthMetres / 2);
  const jamb = (side: number): Spot =>
    spotAlong(run.path, run.closed, middle + (side * widthMetres) / 2).spot;
  return {
    alongMetres: middle,
    widthMetres,
    sillMetres: 0,
    heightMetres: Math.min(DOOR_HEIGHT_METRES, run.heightMetres),
    jambs: [jamb(-1), jamb(1)],
  };
}
