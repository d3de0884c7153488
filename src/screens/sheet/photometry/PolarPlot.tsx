import { useMemo } from 'react';
import type { Distribution } from '../../../core/plan/schema/distribution';
import { formatDegrees } from '../../../core/units/angles';
import { amount, candelaText } from '../../../desk/photometry/words';
import { type PolarHalf, polarOf, polarPlace, POLAR_RADIUS as R } from './polar';
import { plotSentence } from './words';

const SPOKES_DEGREES = [30, 60];
const WIDE = 168;
/** From the outermost ring to the words beside it. */
const GAP = 8;

const line = (side: 1 | -1, degrees: number, radius: number): string => {
  const [x, y] = polarPlace(side, degrees, radius);
  return `M0 0L${x.toFixed(1)} ${y.toFixed(1)}`;
};

function Mark({
  side,
  word,
  degrees,
}: {
  readonly side: 1 | -1;
  readonly word: string;
  readonly degrees: number;
}) {
  if (degrees <= 0 || degrees >= 180) return null;
  const [x, y] = polarPlace(side, degrees, R + GAP);
  return (
    <g className="polar-mark">
      <path d={line(side, degrees, R + 3)} />
      <text x={x} y={y + 4} textAnchor={side > 0 ? 'start' : 'end'}>
        {word} {formatDegrees(degrees * 2, 0)}
      </text>
    </g>
  );
}

const marksOf = ({ side, beamDegrees, fieldDegrees }: PolarHalf) => [
  <Mark key={`beam${side}`} side={side} word="beam" degrees={beamDegrees} />,
  // Two words on one line would be none.
  ...(fieldDegrees - beamDegrees > 5
    ? [<Mark key={`field${side}`} side={side} word="field" degrees={fieldDegrees} />]
    : []),
];

/**
 * A lamp's candela by the angle off its axis, which runs down the sheet: right and left of the lamp in the right half,
 * above and below it in the left, both the same where it is the same all round.
 */
export function PolarPlot({ distribution }: { readonly distribution: Distribution }) {
  const { rings, halves, isRound } = useMemo(() => polarOf(distribution), [distribution]);
  const top = isRound ? -R - 22 : -22;
  const [right, left] = halves;
  const isOneCurve = left.curves.length === 1 && distribution.candela.length === 1;
  return (
    <svg
      className="polar"
      viewBox={`${-WIDE} ${top} ${WIDE * 2} ${R + (isOneCurve ? 12 : 30) - top}`}
      role="img"
      aria-label={plotSentence(distribution)}
    >
      {halves.map(({ side, curves }) => (
        <path key={side} className="polar-light" d={curves[0]} />
      ))}
      <g className="polar-net">
        {rings.map(({ candela, radius }) => (
          <path
            key={candela}
            d={`M${-radius} 0A${radius} ${radius} 0 0 0 ${radius} 0${isRound ? `A${radius} ${radius} 0 0 0 ${-radius} 0` : ''}`}
          />
        ))}
        <path d={`M${-R} 0H${R}M0 ${isRound ? -R : 0}V${R}`} />
        {SPOKES_DEGREES.flatMap((degrees) =>
          ([1, -1] as const).map((side) => <path key={degrees * side} d={line(side, degrees, R)} />),
        )}
      </g>
      {halves.flatMap(({ side, curves }) =>
        curves.map((curve, k) => (
          <path
            key={`${side}${curve}`}
            className={k === 0 ? 'polar-curve' : 'polar-curve across'}
            d={curve}
          />
        )),
      )}
      {marksOf(right)}
      {isOneCurve ? null : marksOf(left)}
      {rings.map(({ candela, radius }, k) => (
        <text key={candela} className="polar-ring" x={radius} y={-5} textAnchor="middle">
          {k === rings.length - 1 ? candelaText(candela) : amount(candela)}
        </text>
      ))}
      {isOneCurve ? null : (
        <>
          <text className="polar-half" x={WIDE} y={R + 24} textAnchor="end">
            across
          </text>
          <text className="polar-half" x={-WIDE} y={R + 24}>
            up and down
          </text>
        </>
      )}
    </svg>
  );
}
