import type { Band } from './runs';
import { distance, type Spot } from './spots';

/** Coordinates are written to a tenth of a millimetre (or of a pixel, in pixels): enough for any scale drawn. */
const written = (value: number): string => String(Math.round(value * 1e4) / 1e4);
const pair = ([x, z]: Spot): string => `${written(x)} ${written(z)}`;

/** SVG path through the points. */
export function polyline(points: readonly Spot[]): string {
  return points.length > 0 ? `M${points.map(pair).join('L')}` : '';
}

export const polygon = (points: readonly Spot[]): string => (points.length > 0 ? `${polyline(points)}Z` : '');

/** SVG path of a band: a ring for a closed run (to be filled even-odd), one outline for an open one. */
export function bandPath(band: Band): string {
  return band.closed
    ? polygon(band.left) + polygon(band.right)
    : polygon([...band.left, ...[...band.right].reverse()]);
}

/** A point that a round line cap makes a dot of, whatever the scale. */
export const dot = ([x, z]: Spot): string => `M${pair([x, z])}h0`;

/** A circle as a path, so that it can stand among others. */
export function circle([x, z]: Spot, radius: number): string {
  const r = written(radius);
  return `M${pair([x - radius, z])}a${r} ${r} 0 1 0 ${written(2 * radius)} 0a${r} ${r} 0 1 0 ${written(-2 * radius)} 0Z`;
}

/** On from where a path is, along a circle to a point; `sweep` is 1 for clockwise on the sheet. */
export const arcTo = (radius: number, sweep: 0 | 1, to: Spot): string =>
  `A${written(radius)} ${written(radius)} 0 0 ${sweep} ${pair(to)}`;

/** Crossed mesh along a segment: a row of crosses as wide as they are long. */
export function meshAlong(from: Spot, to: Spot, width: number): string {
  const length = distance(from, to);
  const count = Math.max(1, Math.round(length / width));
  const along: Spot = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const at = (step: number, side: number): Spot => [
    from[0] + along[0] * step * (length / count) - along[1] * side * (width / 2),
    from[1] + along[1] * step * (length / count) + along[0] * side * (width / 2),
  ];
  if (length === 0) return '';
  return Array.from(
    { length: count },
    (_, step) => polyline([at(step, -1), at(step + 1, 1)]) + polyline([at(step, 1), at(step + 1, -1)]),
  ).join('');
}

/** A square, turned to a heading, around a place. */
export function squareAt([x, z]: Spot, size: number, headingDegrees = 0): string {
  const radians = (headingDegrees * Math.PI) / 180;
  const [c, s] = [(Math.cos(radians) * size) / 2, (Math.sin(radians) * size) / 2];
  return polygon([
    [x - c + s, z - s - c],
    [x + c + s, z + s - c],
    [x + c - s, z + s + c],
    [x - c - s, z - s + c],
  ]);
}
