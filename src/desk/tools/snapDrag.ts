import { ownAnchor } from '../../core/plan/edits/anchorOf';
import { tidySpot } from '../../core/plan/edits/tidy';
import { itemOf } from '../../core/plan/items';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';
import { type Caught, catchNear, snapSpot } from '../../core/plan/snap/snapSpot';
import { footprintCorners, gapsLike, type SnapTargets, snapTargets } from '../../core/plan/snap/snapTargets';
import type { SnapReason, SnapRequest } from '../../core/plan/snap/types';
import { gridStep, lettingCatch } from './catching';
import { snapSettings } from './snapSettings';

/** How a drag catches. */
export interface DragAim {
  /** How far things catch, metres. */
  readonly reachMetres: number;
  /** Whether nothing catches, not even the grid. */
  readonly free: boolean;
  /** Whether it keeps to one axis from where it began. */
  readonly straight: boolean;
  /** Keys of the reasons of the result before. */
  readonly held?: readonly string[];
}

/** Where what is dragged comes to rest, and why. */
export interface SnappedDrag {
  readonly spot: Spot;
  readonly why: readonly SnapReason[];
}

/** More corners than this are no shape that a hand fits to another. */
const MOST_CORNERS = 12;

let known: { readonly plan: Plan; readonly ids: string; readonly targets: SnapTargets } | null = null;

function targetsWithout(plan: Plan, ids: readonly string[]): SnapTargets {
  const key = ids.join(' ');
  if (known?.plan !== plan || known.ids !== key) {
    known = { plan, ids: key, targets: snapTargets(plan, new Set(ids)) };
  }
  return known.targets;
}

/**
 * Where things that are dragged come to rest: their anchor or a corner of what they take of the ground on an edge, at
 * an end, in line with something else, as far from the deck's edge as another of their kind; last on the grid. An axis
 * that the hand did not mean to leave keeps its value, on the grid or off it.
 * @param plan as it was when the drag began
 * @param ids all that moves
 * @param from the anchor where the drag began, metres
 * @param to where the hand would have it
 */
export function snapDrag(
  plan: Plan,
  ids: readonly string[],
  from: Spot,
  to: Spot,
  aim: DragAim,
): SnappedDrag {
  if (aim.free) return { spot: tidySpot(to), why: [] };
  const settings = snapSettings.getState();
  const targets = targetsWithout(plan, ids);
  const records = ids.flatMap((id) => itemOf(plan, id)?.record ?? []);
  const kind = records.length === 1 && records[0] && 'kind' in records[0] ? records[0].kind : null;
  const request: Omit<SnapRequest, 'at' | 'grid'> = {
    from: null,
    reach: aim.reachMetres,
    around: lettingCatch(targets, settings),
    gaps: settings.distances && kind !== null ? gapsLike(plan, kind, to, new Set(ids)) : [],
    inLine: settings.inLine,
    axisDegrees: targets.axisDegrees,
    held: aim.held ?? [],
  };
  const grid = gridStep(settings);
  if (aim.straight) {
    const kept = snapSpot({ ...request, at: to, from, grid, straight: true, straightStepDegrees: 90 });
    return { spot: tidySpot(kept.at), why: kept.why };
  }

  let best: (Caught & { readonly offset: Spot }) | null = null;
  for (const offset of [[0, 0] as Spot, ...cornersOf(plan, ids, from)]) {
    const at: Spot = [to[0] + offset[0], to[1] + offset[1]];
    const found = catchNear({ ...request, at, grid: null });
    // Of two corners that would catch as well as each other the earlier: it does not flutter.
    if (found && (!best || found.cost < best.cost - 1e-6)) best = { ...found, offset };
  }
  const stayed = stay(from, to, grid);
  if (!best) return { spot: stayed, why: grid === null ? [] : [ON_GRID] };
  const spot: Spot = [best.at[0] - best.offset[0], best.at[1] - best.offset[1]];
  return { spot: tidySpot(best.why.length === 1 ? alongLine(best, spot, stayed) : spot), why: best.why };
}

const ON_GRID: SnapReason = { kind: 'grid', word: 'on the grid', key: 'grid' };

/** By steps of the grid, axis by axis; one that is not moved by half a step keeps its value. */
function stay(from: Spot, to: Spot, grid: number | null): Spot {
  if (grid === null) return tidySpot(to);
  const kept = (axis: 0 | 1): number =>
    Math.abs(to[axis] - from[axis]) < grid / 2 ? from[axis] : Math.round(to[axis] / grid) * grid;
  return tidySpot([kept(0), kept(1)]);
}

/** A place on a line along an axis goes by steps along it; on any other line it stays as it is. */
function alongLine({ why }: Caught, spot: Spot, stepped: Spot): Spot {
  const [reason] = why;
  const start = reason?.guide?.[0];
  const end = reason?.guide?.[1];
  if (!start || !end) return spot;
  if (Math.abs(start[0] - end[0]) < 1e-9) return [spot[0], stepped[1]];
  return Math.abs(start[1] - end[1]) < 1e-9 ? [stepped[0], spot[1]] : spot;
}

/** The corners of what moves, from its anchor; those of each thing with its own anchor. */
function cornersOf(plan: Plan, ids: readonly string[], from: Spot): Spot[] {
  const places = ids.flatMap((id): (readonly [number, number])[] => {
    const item = itemOf(plan, id);
    if (!item || item.section === 'cast') return [];
    const own = ownAnchor(item.record);
    return [...(own && ids.length > 1 ? [own] : []), ...footprintCorners(item.record)];
  });
  return places
    .slice(0, MOST_CORNERS)
    .map(([x, z]): Spot => [x - from[0], z - from[1]])
    .filter(([x, z]) => Math.abs(x) + Math.abs(z) > 1e-9);
}
