import { polyline } from '../geometry/paths';
import { type Bounds, distance, type Spot } from '../geometry/spots';

/** How far beside the leg its dimension line stands, and how far short of the leg and past that its two ends reach. */
const OFF = 27;
const SHORT = 10;
const PAST = 7;
/** Half an oblique tick. */
const TICK = 4;
/** Height of the inked chip, and the room beside its words. */
export const CHIP_HEIGHT = 22;
const CHIP_PAD = 8;
/** How near to the edge of the pane anything is lettered. */
const EDGE = 6;
/** Height of a line of lettering. */
const LINE = 15;
/** The crosshair's arms, from its middle. */
export const CROSSHAIR = 16;

/** A leg dimensioned beside itself, pixels. */
export interface LegDrawing {
  readonly lines: string;
  readonly ticks: string;
  /** The chip with its length: left, top, right, bottom. */
  readonly chip: Bounds;
  /** Where the words on its other side stand, in their middle. */
  readonly aside: Spot;
}

/** Moves an area by as little as brings it into the pane. */
export function kept([left, top, right, bottom]: Bounds, pane: Bounds): Bounds {
  const by = (low: number, high: number, least: number, most: number): number =>
    low < least + EDGE
      ? least + EDGE - low
      : high > most - EDGE
        ? Math.max(most - EDGE - high, least + EDGE - low)
        : 0;
  const x = by(left, right, pane[0], pane[2]);
  const y = by(top, bottom, pane[1], pane[3]);
  return [left + x, top + y, right + x, bottom + y];
}

const around = ([x, y]: Spot, width: number, height: number): Bounds => [
  x - width / 2,
  y - height / 2,
  x + width / 2,
  y + height / 2,
];

/** The unit vector beside a leg, down the sheet or, along an upright leg, to its right. */
function besideOf(from: Spot, to: Spot): Spot {
  const length = distance(from, to) || 1;
  const way: Spot = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const side: Spot = [-way[1], way[0]];
  return side[1] < -1e-9 || (Math.abs(side[1]) <= 1e-9 && side[0] < 0) ? [-side[0], -side[1]] : side;
}

/** Draws the dimension of a leg; its chip and the words on its other side stay within the pane. */
export function legDrawing(
  from: Spot,
  to: Spot,
  widths: { readonly chip: number; readonly aside: number },
  pane: Bounds,
): LegDrawing {
  const side = besideOf(from, to);
  const off = ([x, y]: Spot, by: number): Spot => [x + side[0] * by, y + side[1] * by];
  const [start, end] = [off(from, OFF), off(to, OFF)];
  const middle: Spot = [(start[0] + end[0]) / 2, (start[1] + end[1]) / 2];
  const oblique = ([x, y]: Spot): string =>
    polyline([
      [x - TICK, y + TICK],
      [x + TICK, y - TICK],
    ]);
  // Beside an upright leg the chip would lie half over it.
  const lean = Math.abs(side[0]) * (widths.chip / 2);
  const chipAt = off(middle, lean);
  const awayAside = 12 + Math.abs(side[0]) * (widths.aside / 2);
  const legMiddle: Spot = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const aside = kept(around(off(legMiddle, -awayAside), widths.aside, LINE), pane);
  return {
    lines:
      polyline([off(from, SHORT), off(from, OFF + PAST)]) +
      polyline([off(to, SHORT), off(to, OFF + PAST)]) +
      polyline([start, end]),
    ticks: oblique(start) + oblique(end),
    chip: kept(around(chipAt, widths.chip + 2 * CHIP_PAD, CHIP_HEIGHT), pane),
    aside: [(aside[0] + aside[2]) / 2, (aside[1] + aside[3]) / 2],
  };
}

const overlaps = (a: Bounds, b: Bounds): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];

const overlapOf = (a: Bounds, b: Bounds): number =>
  overlaps(a, b)
    ? (Math.min(a[2], b[2]) - Math.max(a[0], b[0])) * (Math.min(a[3], b[3]) - Math.max(a[1], b[1]))
    : 0;

/**
 * Where words beside the hand stand: below it to the right where there is room, else on another side of it; clear of
 * what is lettered already as far as can be, and never outside of the pane.
 */
export function besideHand(
  hand: Spot,
  size: { readonly width: number; readonly lines: number },
  taken: readonly Bounds[],
  pane: Bounds,
): Bounds {
  const [x, y] = hand;
  const { width } = size;
  const height = size.lines * LINE;
  const [gap, arm] = [CROSSHAIR + 3, CROSSHAIR / 2];
  const places: readonly Bounds[] = [
    [x + gap, y + arm, x + gap + width, y + arm + height],
    [x + gap, y - arm - height, x + gap + width, y - arm],
    [x - gap - width, y + arm, x - gap, y + arm + height],
    [x - gap - width, y - arm - height, x - gap, y - arm],
    [x - width / 2, y - 2 * gap - height, x + width / 2, y - 2 * gap],
    [x - width / 2, y + 2 * gap, x + width / 2, y + 2 * gap + height],
  ];
  const costed = places.map((place, index) => {
    const within = kept(place, pane);
    const pushed = Math.abs(within[0] - place[0]) + Math.abs(within[1] - place[1]);
    const covered = taken.reduce((sum, each) => sum + overlapOf(within, each), 0);
    return { within, cost: covered * 4 + pushed * 10 + index };
  });
  return costed.reduce((best, each) => (each.cost < best.cost ? each : best)).within;
}

/** Room that the buttons for a finger take, and how far off the corner they stand. */
const BUTTONS = { width: 236, height: 48, off: 40 };

/** Where the buttons for a finger stand: over the last corner, below it where there is no room. */
export function buttonsBy([x, y]: Spot, pane: Bounds): Bounds {
  const { width, height, off } = BUTTONS;
  const above = y - off - height;
  const top = above < pane[1] + EDGE ? y + off : above;
  return kept([x - width / 2, top, x + width / 2, top + height], pane);
}
