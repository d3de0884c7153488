import { runLength, type SpotAlong, spotAlong } from '../runs';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { applyMotion, landings } from './applyMotion';
import { type Copied, copyItems } from './copies';
import { entourageOf } from './entourage';
import { middleOf } from './extent';
import { after, type Motion, rotation, translation } from './motion';
import { kept, sameSpot, tidyMetres } from './tidy';

/** The longest row that is laid at once. */
export const MOST_IN_A_ROW = 500;
const SHORTEST_SPACING_METRES = 0.01;

export interface Row {
  readonly ids: readonly string[];
  /** The way: the first corner stands for where the items are, wherever it lies. */
  readonly along: readonly Spot[];
  /** How many there shall be, the items themselves counted: 2 and more, at most 500. */
  readonly count: number;
  /** From one to the next; evenly over the whole way where left out. */
  readonly spacingMetres?: number;
  /** Whether they turn with the way. */
  readonly follow: boolean;
}

/** Places along the way, that of the items first. With a spacing, only as many as the way is long. */
export function rowPlaces({
  along,
  count,
  spacingMetres,
}: Omit<Row, 'ids' | 'follow'>): readonly SpotAlong[] {
  const [first, last] = [along[0], along.at(-1)];
  if (!first || !last) return [];
  const closed = along.length > 3 && sameSpot(first, last);
  const length = runLength(along, false);
  const wanted = kept(Math.floor(count), 1, MOST_IN_A_ROW);
  const gaps = closed ? wanted : wanted - 1;
  const spacing =
    spacingMetres === undefined
      ? length / Math.max(gaps, 1)
      : Math.max(spacingMetres, SHORTEST_SPACING_METRES);
  const fitting = Math.floor(length / spacing + 1e-9) + (closed && spacingMetres !== undefined ? 0 : 1);
  const places = spacingMetres === undefined ? wanted : kept(fitting, 1, wanted);
  if (length === 0) return [];
  return Array.from({ length: places }, (_, index) => spotAlong(along, false, spacing * index));
}

/** From the first place of a row to another. */
function motionTo(first: SpotAlong, place: SpotAlong, follow: boolean, middle: Spot): Motion {
  const by: Spot = [tidyMetres(place.spot[0] - first.spot[0]), tidyMetres(place.spot[1] - first.spot[1])];
  const shift = translation(by);
  // A row of lamps is a row of lights: each is aimed as far beside the first one's aim as it stands beside that.
  const whole: Motion = { ...shift, aim: shift.spot };
  return follow ? after(whole, rotation(middle, place.bearingDegrees - first.bearingDegrees)) : whole;
}

/**
 * Lays copies of items in a row along a way of straight pieces, so many metres apart or evenly, turning with it or
 * not; the items stay as the first of the row. Gives the plan and the ids of the copies (see `copyItems`).
 */
export function arrayItems(plan: Plan, row: Row): Copied {
  const [first, ...others] = rowPlaces(row);
  const middle = middleOf(plan, row.ids);
  if (!first || !middle) return { plan, ids: [] };
  let laid = plan;
  const ids: string[] = [];
  for (const place of others) {
    const motion = motionTo(first, place, row.follow, middle);
    const copied = copyItems(laid, row.ids, (before, moving) => {
      const entourage = entourageOf(before, moving, { evenLocked: true, decks: false });
      return applyMotion(before, entourage, motion, landings(before, entourage, motion));
    });
    if (copied.ids.length === 0) return { plan, ids: [] };
    laid = copied.plan;
    ids.push(...copied.ids);
  }
  return { plan: laid, ids };
}
