import { metresBetween } from '../../../core/plan/runs';
import type { Tape } from '../../../core/plan/schema/drawing';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { slantDimension } from '../geometry/dimensions';
import { distance, type Spot } from '../geometry/spots';
import { textWidth } from '../measureText';

/** How far its figure stands off the tape, pixels. */
const OFF = 9;

/** The tapes that lie on the roof: thin dimensions with their lengths, read along them. */
export function Tapes({
  tapes,
  at,
  lengths,
}: {
  readonly tapes: readonly Tape[];
  readonly at: (spot: Spot) => Spot;
  readonly lengths: LengthSystem;
}) {
  return (
    <g className="tapes">
      {tapes.map(({ id, from, to }) => {
        const [start, end] = [at(from), at(to)];
        const { line, ticks } = slantDimension(start, end);
        const figure = formatLength(metresBetween(from, to), lengths);
        const fits = distance(start, end) > textWidth(figure, 'mark', false) + 8;
        return (
          <g key={id} data-tape={id}>
            <path className="dim-line" d={line} />
            <path className="dim-tick" d={ticks} />
            <text textAnchor="middle" transform={fits ? alongTape(start, end) : besideTape(start, end)}>
              {figure}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** Never upside down: read from below, or along an upright tape from the right. */
function alongTape(start: Spot, end: Spot): string {
  const turn = (Math.atan2(end[1] - start[1], end[0] - start[0]) * 180) / Math.PI;
  const upright = turn > 90 - 1e-6 ? turn - 180 : turn <= -90 - 1e-6 ? turn + 180 : turn;
  return `translate(${(start[0] + end[0]) / 2} ${(start[1] + end[1]) / 2}) rotate(${upright}) translate(0 ${-OFF + 4})`;
}

function besideTape(start: Spot, end: Spot): string {
  const x = Math.max(start[0], end[0]);
  return `translate(${x + 26} ${(start[1] + end[1]) / 2 + 4})`;
}
