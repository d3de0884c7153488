import { Buckets } from './buckets';
import { lengthWithin, sharedArea } from './clipping';
import type { Bounds, Spot } from './spots';

/** A name that wants a place on the drawing. Everything in pixels of the pane. */
export interface LabelWish {
  readonly id: string;
  readonly text: string;
  readonly width: number;
  readonly height: number;
  /** What it names, as an upright rectangle. */
  readonly around: Bounds;
  /** Higher is placed first. */
  readonly priority: number;
  /** Whether it may stand inside what it names, when it fits. */
  readonly inside: boolean;
  /** Where it may stand instead of around what it names, best first. */
  readonly places?: readonly Bounds[];
  /** Above this cost it is left out: what is seldom asked for should not clutter. */
  readonly worth: number;
}

export interface PlacedLabel {
  readonly id: string;
  readonly text: string;
  readonly bounds: Bounds;
  readonly inside: boolean;
}

/** What a name had better not cover. */
export interface Obstacles {
  /** Symbols: whose they are, where, and how much it costs to cover one, or a whole name by one. */
  readonly boxes: readonly { readonly owner: string; readonly bounds: Bounds; readonly cost: number }[];
  /** Lines: the cost is for crossing a label from end to end. */
  readonly lines: readonly { readonly from: Spot; readonly to: Spot; readonly cost: number }[];
  /** Where no lettering may go at all. */
  readonly blocked: readonly Bounds[];
}

/** Space between a symbol and its name, pixels. */
const GAP = 4;
/** Places inside, as shares of the room that is left: the middle, above and below it, then the sides and corners. */
const INSIDE = [0, -0.5, 0.5].flatMap((across) =>
  [0, -0.3, 0.3, -0.5, 0.5].map((down): Spot => [across, down]),
);

/** Farther rings of places, with what each costs. */
const RINGS = [
  { gap: GAP, cost: 0 },
  { gap: GAP + 8, cost: 0.35 },
  { gap: GAP + 18, cost: 0.8 },
] as const;

/**
 * Gives each name the cheapest of its places around what it names: highest priority first, never over a name that
 * is placed already, never over what is blocked, never out of the pane. A name without such a place is left out.
 */
export function placeLabels(wishes: readonly LabelWish[], obstacles: Obstacles, pane: Bounds): PlacedLabel[] {
  const ground = groundOf(obstacles, pane);
  const inOrder = [...wishes].sort((a, b) => b.priority - a.priority || (a.id < b.id ? -1 : 1));
  for (const wish of inOrder) {
    let best: PlacedLabel | null = null;
    let bestCost = wish.worth;
    for (const place of placesOf(wish)) {
      if (place.cost >= bestCost || !isFree(place.bounds, ground)) continue;
      const cost = costAt(place, wish, ground, bestCost);
      if (cost >= bestCost) continue;
      best = { id: wish.id, text: wish.text, bounds: place.bounds, inside: place.inside };
      bestCost = cost;
    }
    if (!best) continue;
    ground.placedIn.addBox(ground.placed.length, best.bounds);
    ground.placed.push(best);
  }
  return ground.placed;
}

/** What is in the way, by where it is. */
interface Ground extends Obstacles {
  readonly pane: Bounds;
  readonly boxesIn: Buckets;
  readonly linesIn: Buckets;
  readonly placed: PlacedLabel[];
  readonly placedIn: Buckets;
}

function groundOf(obstacles: Obstacles, pane: Bounds): Ground {
  const [boxesIn, linesIn] = [new Buckets(pane), new Buckets(pane)];
  obstacles.boxes.forEach(({ bounds }, index) => {
    boxesIn.addBox(index, bounds);
  });
  obstacles.lines.forEach(({ from, to }, index) => {
    linesIn.addLine(index, from, to);
  });
  return { ...obstacles, pane, boxesIn, linesIn, placed: [], placedIn: new Buckets(pane) };
}

interface Place {
  readonly bounds: Bounds;
  readonly cost: number;
  readonly inside: boolean;
}

function placesOf({ around, width, height, inside, places: own }: LabelWish): Place[] {
  if (own) return own.map((bounds, index) => ({ bounds, cost: index * 0.015, inside: false }));
  const [left, top, right, bottom] = around;
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const place = (l: number, t: number, cost: number, isInside = false): Place => ({
    bounds: [l, t, l + width, t + height],
    cost,
    inside: isInside,
  });
  const places: Place[] = [];
  if (inside && right - left > width + 8 && bottom - top > height + 6) {
    const room = [right - left - width - 8, bottom - top - height - 6];
    for (const [across, down] of INSIDE) {
      const cost = 0.05 * (Math.abs(across) + Math.abs(down));
      places.push(place(x - width / 2 + across * room[0], y - height / 2 + down * room[1], cost, true));
    }
  }
  for (const { gap, cost } of RINGS) {
    const [l, r] = [left - gap - width, right + gap];
    const [t, b] = [top - gap - height + 3, bottom + gap - 3];
    places.push(
      place(r, y - height / 2, cost + 0.1),
      place(x - width / 2, b, cost + 0.12),
      place(x - width / 2, t, cost + 0.14),
      place(l, y - height / 2, cost + 0.16),
      place(r - 3, b - 4, cost + 0.18),
      place(r - 3, t + 4, cost + 0.2),
      place(l + 3, b - 4, cost + 0.22),
      place(l + 3, t + 4, cost + 0.24),
    );
    if (right - left > 2 * width) {
      places.push(place(left, t, cost + 0.3), place(right - width, t, cost + 0.3));
      places.push(place(left, b, cost + 0.3), place(right - width, b, cost + 0.3));
    }
  }
  return places;
}

function isFree(bounds: Bounds, { pane, placed, placedIn, blocked }: Ground): boolean {
  if (bounds[0] < pane[0] || bounds[1] < pane[1] || bounds[2] > pane[2] || bounds[3] > pane[3]) return false;
  return (
    placedIn.near(bounds).every((index) => sharedArea(placed[index].bounds, bounds) === 0) &&
    blocked.every((other) => sharedArea(other, bounds) === 0)
  );
}

/** What a place costs with all that the name would cover there; once that is more than `most`, no more is counted. */
function costAt({ bounds, cost: own }: Place, wish: LabelWish, ground: Ground, most: number): number {
  const area = wish.width * wish.height;
  let cost = 0;
  for (const index of ground.boxesIn.near(bounds)) {
    const box = ground.boxes[index];
    if (box.owner === wish.id) continue;
    // Of a small symbol all may be covered by a small part of the name: the smaller of the two counts.
    const [left, top, right, bottom] = box.bounds;
    const least = Math.max(1, Math.min(area, (right - left) * (bottom - top)));
    cost += (box.cost * sharedArea(box.bounds, bounds)) / least;
    if (own + cost >= most) return own + cost;
  }
  for (const index of ground.linesIn.near(bounds)) {
    const line = ground.lines[index];
    cost += line.cost * Math.min(1, (2 * lengthWithin(line.from, line.to, bounds)) / wish.width);
    if (own + cost >= most) return own + cost;
  }
  return own + cost;
}
