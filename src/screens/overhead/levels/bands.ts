import { stopsBetween } from '../../../core/light/exposure';
import type { LevelGrid } from '../../../core/light/levelGrid';

/** The steps of the palette stand for whole stops: the first for this many or fewer, the last for the highest or more. */
const LOWEST_STOP = -4;
const BANDS = 8;
export const STOPS = Array.from({ length: BANDS }, (_, k) => LOWEST_STOP + k);

/** The step of the palette for a number of stops, 0..7: the nearest whole stop. */
export const bandOf = (stops: number): number =>
  Math.min(BANDS - 1, Math.max(0, Math.round(stops) - LOWEST_STOP));

/** A map of any values in rows, with where its first square's corner is and how large its squares are. */
export interface Squares {
  readonly corner: readonly [number, number];
  readonly step: readonly [number, number];
  readonly columns: number;
  readonly rows: number;
  /** NaN where there is nothing. */
  readonly stops: Float64Array;
}

/** Less than this is as dark as the map shows, lux. */
const LEAST_LUX = 1e-6;

/** A level map in stops from what an exposure asks for. */
export function squaresOf({ corner, stepMetres, columns, rows, lux }: LevelGrid, askedLux: number): Squares {
  const stops = Float64Array.from(lux, (level) => stopsBetween(askedLux, Math.max(LEAST_LUX, level)));
  return { corner, step: [stepMetres, stepMetres], columns, rows, stops };
}

const figure = (value: number): string => String(Math.round(value * 1e4) / 1e4);

/** The squares of each step of the palette as one path, neighbours in a row taken together. */
export function bandPaths({ corner, step, columns, rows, stops }: Squares): readonly string[] {
  const paths = Array.from({ length: BANDS }, () => '');
  for (let row = 0; row < rows; row += 1) {
    let from = 0;
    const bandAt = (column: number): number | null => {
      const value = column < columns ? stops[row * columns + column] : Number.NaN;
      return Number.isNaN(value) ? null : bandOf(value);
    };
    for (let column = 1; column <= columns; column += 1) {
      const band = bandAt(from);
      if (column < columns && bandAt(column) === band) continue;
      if (band !== null) {
        const [x, y] = [corner[0] + from * step[0], corner[1] + row * step[1]];
        const wide = (column - from) * step[0];
        paths[band] += `M${figure(x)} ${figure(y)}h${figure(wide)}v${figure(step[1])}h${figure(-wide)}z`;
      }
      from = column;
    }
  }
  return paths;
}
