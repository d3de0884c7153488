import type { HeightLimits } from '../../../core/clearance/ground/heightLimit';
import { GROUND_STATES } from '../../../core/clearance/ground/types';
import { type LengthSystem, METRES_PER_FOOT } from '../../../core/units/lengths';
import type { Squares } from '../levels/bands';

/** Heights that have a line, metres. */
const LINES = {
  m: [1, 1.5, 2, 2.5, 3, 4, 5, 6],
  'ft-in': [3, 5, 7, 9, 12, 16, 20].map((feet) => feet * METRES_PER_FOOT),
} as const satisfies Record<LengthSystem, readonly number[]>;

export const limitLines = (lengths: LengthSystem): readonly number[] => LINES[lengths];

/**
 * Limits as a map that lines of one height can be drawn through: where no stand stays clear, and where any does, there
 * is nothing, since all lines at once would run along their edges.
 */
export const limitSquares = ({ corner, stepMetres, columns, rows, limitMetres }: HeightLimits): Squares => ({
  corner,
  step: [stepMetres, stepMetres],
  columns,
  rows,
  stops: limitMetres.map((metres) => (metres > 0 && metres < Infinity ? metres : Number.NaN)),
});

/** The squares on which a stand of any height stays clear, as states: clear, or showing for all others. */
export function unlimited({ limitMetres }: HeightLimits): Uint8Array {
  const [none, clear, showing] = [0, GROUND_STATES.indexOf('clear'), GROUND_STATES.indexOf('showing')];
  return Uint8Array.from(limitMetres, (metres) =>
    Number.isNaN(metres) ? none : metres === Infinity ? clear : showing,
  );
}
