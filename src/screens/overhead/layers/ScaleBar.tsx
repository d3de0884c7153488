import { type LengthSystem, METRES_PER_FOOT } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import { barMetres, pixelsPerMetre } from '../geometry/sheet';

/** Width that the bar may take, pixels. */
const BAR_ROOM = 150;
const PARTS = 5;

/** A round length at the scale 1 : `scale`, at most `room` pixels long. */
export function ScaleBar(props: {
  readonly scale: number;
  readonly lengths: LengthSystem;
  readonly room?: number;
}) {
  const { scale, lengths, room = BAR_ROOM } = props;
  // In feet a round number of feet: the bar of a scale in feet, read as metres.
  const metres =
    lengths === 'm' ? barMetres(scale, room) : barMetres(scale / METRES_PER_FOOT, room) * METRES_PER_FOOT;
  const length = metres * pixelsPerMetre(scale);
  const part = length / PARTS;
  const words =
    lengths === 'm' ? `${metres}${NBSP}m` : `${Math.round((metres / METRES_PER_FOOT) * 10) / 10}${NBSP}ft`;
  return (
    <svg className="scale-bar" width={length + 28} height="24" role="img" aria-label={`scale bar, ${words}`}>
      {Array.from({ length: PARTS }, (_, index) => index).map((index) => (
        <rect
          key={index}
          className={index % 2 === 0 ? 'filled' : 'empty'}
          x={0.5 + index * part}
          y="16.5"
          width={part}
          height="5"
        />
      ))}
      <text x="0" y="11">
        0
      </text>
      <text x={length + 0.5} y="11" textAnchor="middle">
        {words}
      </text>
    </svg>
  );
}

/** Where true north is, degrees clockwise from up the sheet. */
export function North({ degrees }: { readonly degrees: number }) {
  return (
    <svg className="north" width="30" height="34" role="img" aria-label="north">
      <g transform={`rotate(${degrees} 15 17)`}>
        <circle cx="15" cy="17" r="8" />
        <path d="M15 3v28" />
        <path className="point" d="M15 2l4 15h-4z" />
      </g>
    </svg>
  );
}
