import { polyline } from './paths';
import type { Spot } from './spots';

/** Half the length of an oblique tick, pixels. */
const TICK = 4;
/** How far the extension lines run past the dimension line, and short of what is measured, pixels. */
const PAST = 8;

/** A dimension line in the pane: its thin lines, its oblique ticks, and where each figure stands. */
export interface DimensionDrawing {
  readonly lines: string;
  readonly ticks: string;
  readonly figures: readonly { readonly at: Spot; readonly metres: number; readonly room: number }[];
}

/**
 * A chain of dimensions along a level line at `y`, through the pixels `stops`, whose distances in metres are given.
 * `reach` says how far up (negative) or down the extension lines run towards what is measured.
 */
export function levelChain(
  stops: readonly number[],
  metres: readonly number[],
  y: number,
  reach: number,
): DimensionDrawing {
  const past = reach < 0 ? PAST : -PAST;
  return {
    lines:
      polyline([
        [stops[0], y],
        [stops[stops.length - 1], y],
      ]) +
      stops
        .map((x) =>
          polyline([
            [x, y + past],
            [x, y + reach],
          ]),
        )
        .join(''),
    ticks: stops.map((x) => oblique(x, y)).join(''),
    figures: metres.map((value, index) => ({
      at: [(stops[index] + stops[index + 1]) / 2, y - 5],
      metres: value,
      room: Math.abs(stops[index + 1] - stops[index]),
    })),
  };
}

/** The same along an upright line at `x`; its figures are read from the right. */
export function uprightChain(
  stops: readonly number[],
  metres: readonly number[],
  x: number,
  reach: number,
): DimensionDrawing {
  const past = reach < 0 ? PAST : -PAST;
  return {
    lines:
      polyline([
        [x, stops[0]],
        [x, stops[stops.length - 1]],
      ]) +
      stops
        .map((y) =>
          polyline([
            [x + past, y],
            [x + reach, y],
          ]),
        )
        .join(''),
    ticks: stops.map((y) => oblique(x, y)).join(''),
    figures: metres.map((value, index) => ({
      at: [x - 5, (stops[index] + stops[index + 1]) / 2],
      metres: value,
      room: Math.abs(stops[index + 1] - stops[index]),
    })),
  };
}

/** A dimension between any two points, its line moved to the side by nothing: ticks at both ends. */
export function slantDimension(from: Spot, to: Spot): { readonly line: string; readonly ticks: string } {
  return { line: polyline([from, to]), ticks: oblique(from[0], from[1]) + oblique(to[0], to[1]) };
}

const oblique = (x: number, y: number): string =>
  polyline([
    [x - TICK, y + TICK],
    [x + TICK, y - TICK],
  ]);

/** Ticks of whole metres along an edge of the pane: short for each, longer for every fifth; none closer than 5 pixels. */
export function metreTicks(
  origin: number,
  perMetre: number,
  length: number,
): { readonly at: number; readonly long: boolean }[] {
  const every = perMetre >= 5 ? 1 : perMetre * 5 >= 5 ? 5 : perMetre * 50 >= 5 ? 50 : 500;
  const first = Math.ceil(-origin / perMetre / every);
  const last = Math.floor((length - origin) / perMetre / every);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    const step = first + index;
    return { at: origin + step * every * perMetre, long: step % 5 === 0 };
  });
}
