import { itemOf } from '../items';
import { alongOf, legsOf, metresBetween, runLength, spotAlong } from '../runs';
import type { Gear } from '../schema/gear';
import type { Spot } from '../schema/numbers';
import type { Opening, Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { isHoleOf } from './addHole';
import { withArea } from './areas';
import { editRecord } from './editRecord';
import { MOST } from './limits';
import { kept, sameSpot, tidyMetres } from './tidy';

/** The longest that an opening may lie from the start of its run, as the schema has it. */
const FARTHEST_ALONG_METRES = 500;

/** The corners of an item, and whether the last is joined to the first. */
export interface Corners {
  readonly spots: readonly Spot[];
  readonly closed: boolean;
}

/**
 * The corners of a run, an outline, a cable, a wet area or one hole of a deck, and the two ends of a line; null where it
 * has none.
 */
export function cornersOf(plan: Plan, id: string, hole?: string): Corners | null {
  const record = itemOf(plan, id)?.record;
  if (!record) {
    const area = hole === undefined && plan.ground.areas?.find((each) => each.id === id);
    return area ? { spots: area.outline, closed: true } : null;
  }
  if ('marks' in record) return null;
  if ('outline' in record) {
    if (hole === undefined) return { spots: record.outline, closed: true };
    const found = record.holes?.find((entry) => entry.id === hole);
    return found ? { spots: found.outline, closed: true } : null;
  }
  if (hole !== undefined) return null;
  if ('path' in record) return { spots: record.path, closed: 'closed' in record && record.closed };
  if ('from' in record)
    return {
      spots: [
        [record.from[0], record.from[2]],
        [record.to[0], record.to[2]],
      ],
      closed: false,
    };
  return null;
}

type Line = Extract<Piece | Gear, { readonly from: unknown }>;
type Run = Extract<Piece, { readonly path: unknown }>;

/** Where an opening lies on a run whose corners became others. */
export type Remap = (opening: Opening, run: Run, path: readonly Spot[]) => number;

/** The opening stays at its place in the world, as near as the new run comes to it. */
export const stayingPut: Remap = ({ alongMetres }, { path, closed }, next) =>
  alongOf(next, closed, spotAlong(path, closed, alongMetres).spot);

/** The opening keeps its distance from that end of its leg which did not move. */
export const stayingOnLeg: Remap = ({ alongMetres }, { path, closed }, next) => {
  const [before, now] = [legsOf(path, closed), legsOf(next, closed)];
  let from = 0;
  let to = 0;
  for (const [index, [start, end]] of before.entries()) {
    const length = metresBetween(start, end);
    const [nextStart, nextEnd] = now[index];
    const nextLength = metresBetween(nextStart, nextEnd);
    if (alongMetres <= from + length || index === before.length - 1) {
      const offset = alongMetres - from;
      const moved = sameSpot(start, nextStart) ? offset : nextLength - (length - offset);
      return to + kept(moved, 0, nextLength);
    }
    from += length;
    to += nextLength;
  }
  return alongMetres;
};

/** The run along other corners, its openings where they belong. */
function alongCorners(run: Run, path: readonly Spot[], remap: Remap): Run {
  const corners = { ...run, path: [...path] };
  if (!run.openings) return corners;
  const farthest = Math.min(runLength(path, run.closed), FARTHEST_ALONG_METRES);
  const openings = run.openings.map((opening) => {
    const alongMetres = kept(tidyMetres(remap(opening, run, path)), 0, farthest);
    return alongMetres === opening.alongMetres ? opening : { ...opening, alongMetres };
  });
  return { ...corners, openings };
}

const withEnds = <Entry extends Line>(line: Entry, [from, to]: readonly Spot[]): Entry => ({
  ...line,
  from: [from[0], line.from[1], from[1]],
  to: [to[0], line.to[1], to[1]],
});

/** The deck with another outline, or another outline of one hole; the same where a hole would not lie inside. */
function outlined(deck: Extract<Piece, { readonly kind: 'deck' }>, spots: readonly Spot[], hole?: string) {
  const holes = deck.holes ?? [];
  if (hole !== undefined) {
    if (!isHoleOf(deck, spots, hole)) return deck;
    return {
      ...deck,
      holes: holes.map((entry) => (entry.id === hole ? { ...entry, outline: [...spots] } : entry)),
    };
  }
  const next = { ...deck, outline: [...spots] };
  return holes.every((entry) => isHoleOf(next, entry.outline, entry.id)) ? next : deck;
}

/**
 * Gives an item or a wet area other corners: at least two for a run or a cable, three for an outline, two for a line;
 * what is fewer or more than a plan may hold changes nothing.
 */
export function withCorners(
  plan: Plan,
  {
    id,
    hole,
    spots,
    remap,
  }: {
    readonly id: string;
    readonly hole?: string | undefined;
    readonly spots: readonly Spot[];
    readonly remap: Remap;
  },
): Plan {
  const before = cornersOf(plan, id, hole);
  if (!before || spots.length > MOST.corners || spots.length < 2) return plan;
  if (spots.length === before.spots.length && spots.every((spot, at) => sameSpot(spot, before.spots[at])))
    return plan;
  if (!itemOf(plan, id)) {
    if (spots.length < 3 || spots.length > MOST.areaCorners) return plan;
    return withArea(plan, id, (area) => ({ ...area, outline: [...spots] }));
  }
  return editRecord(plan, id, {
    piece: (piece) => {
      if (piece.kind === 'deck') return spots.length < 3 ? piece : outlined(piece, spots, hole);
      if ('path' in piece) return alongCorners(piece, spots, remap);
      return 'from' in piece && spots.length === 2 ? withEnds(piece, spots) : piece;
    },
    gear: (gear) => {
      if (gear.kind === 'cable') return { ...gear, path: [...spots] };
      return 'from' in gear && spots.length === 2 ? withEnds(gear, spots) : gear;
    },
  });
}
