import { lengthWithin, sharedArea } from './clipping';
import type { Bounds, Spot } from './spots';

/** Words of a finding that want a place outside the deck, with the ring that they belong to. Pixels. */
export interface NoteWish {
  readonly id: string;
  readonly ring: { readonly middle: Spot; readonly radius: number };
  readonly width: number;
  readonly height: number;
}

export interface PlacedNote {
  readonly id: string;
  readonly bounds: Bounds;
  /** From the edge of the ring to the words. */
  readonly leader: readonly [Spot, Spot];
}

const STEP = 8;
const CLEARANCE = 6;
/** A leader that costs this share of the pane's longer side leads nowhere: the ring stands alone. */
const UNFIT_SHARE = 0.6;

/**
 * Gives each note the place outside `drawing` with the shortest leader that crosses no other note, and rather none of
 * the figures in `crossed`; in order of the wishes. What finds no place is left out: its ring still stands, and its words are in the list beside.
 */
export function placeNotes(
  wishes: readonly NoteWish[],
  drawing: Bounds,
  { blocked, crossed }: { readonly blocked: readonly Bounds[]; readonly crossed: readonly Bounds[] },
  pane: Bounds,
): PlacedNote[] {
  const placed: PlacedNote[] = [];
  const unfit = UNFIT_SHARE * Math.max(pane[2] - pane[0], pane[3] - pane[1]);
  for (const wish of wishes) {
    let best: PlacedNote | null = null;
    let shortest = Number.POSITIVE_INFINITY;
    for (const [left, top] of cornersOutside(wish, drawing, pane)) {
      const bounds: Bounds = [left, top, left + wish.width, top + wish.height];
      const near = grown(bounds, CLEARANCE);
      const taken =
        sharedArea(bounds, drawing) > 0 ||
        blocked.some((other) => sharedArea(other, near) > 0) ||
        placed.some((other) => sharedArea(other.bounds, near) > 0);
      if (taken) continue;
      const leader = leaderOf(wish, bounds);
      const crossings = placed.filter(
        (other) =>
          lengthWithin(leader[0], leader[1], grown(other.bounds, 2)) > 0 ||
          lengthWithin(other.leader[0], other.leader[1], near) > 0,
      ).length;
      const figures = crossed.filter((figure) => lengthWithin(leader[0], leader[1], figure) > 0).length;
      const length =
        Math.hypot(leader[1][0] - leader[0][0], leader[1][1] - leader[0][1]) +
        lengthWithin(leader[0], leader[1], drawing) / 1.5 +
        crossings * unfit +
        figures * 120;
      if (length >= shortest) continue;
      shortest = length;
      best = { id: wish.id, bounds, leader };
    }
    if (best && shortest < unfit) placed.push(best);
  }
  return placed;
}

export const grown = ([left, top, right, bottom]: Bounds, by: number): Bounds => [
  left - by,
  top - by,
  right + by,
  bottom + by,
];

/** Places on a grid in the four margins around the drawing. */
function* cornersOutside(wish: NoteWish, drawing: Bounds, pane: Bounds): Generator<Spot> {
  const [lastX, lastY] = [pane[2] - wish.width, pane[3] - wish.height];
  for (let y = pane[1]; y <= lastY; y += STEP) {
    const level = y + wish.height > drawing[1] && y < drawing[3];
    for (let x = pane[0]; x <= lastX; x += STEP) {
      if (level && x + wish.width > drawing[0] && x < drawing[2]) continue;
      yield [x, y];
    }
  }
}

/** From the ring's edge to the nearest end of the words, at the height of their first line. */
function leaderOf(wish: NoteWish, bounds: Bounds): readonly [Spot, Spot] {
  const [x, y] = wish.ring.middle;
  const line = bounds[1] + Math.min(wish.height / 2, 8);
  const ends: readonly Spot[] = [
    [bounds[0] - 3, line],
    [bounds[2] + 3, line],
    [Math.min(bounds[2], Math.max(bounds[0], x)), y > bounds[3] ? bounds[3] + 2 : bounds[1] - 2],
  ];
  const to = ends.reduce((best, end) =>
    Math.hypot(end[0] - x, end[1] - y) < Math.hypot(best[0] - x, best[1] - y) ? end : best,
  );
  const size = Math.hypot(to[0] - x, to[1] - y) || 1;
  return [[x + ((to[0] - x) / size) * wish.ring.radius, y + ((to[1] - y) / size) * wish.ring.radius], to];
}
