import { memo, useMemo } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatSigned } from '../../../core/units/numbers';
import { useSettledSeconds } from '../useSettledSeconds';
import { bandPaths, type Squares, STOPS } from './bands';
import { contourLabels, contoursOf } from './contours';
import { useLevels } from './useLevels';
import './levels.css';

/** Coarser squares than this have no lines worth drawing, metres. */
const FINE_METRES = 0.5;
/** A line shorter than this is not lettered, and letters keep this far apart, metres. */
const LETTERED_METRES = 3;
const APART_METRES = 1.6;
/** Height of the lettering, CSS pixels. */
const LETTER_PIXELS = 11;

/** Light over the decks in eight steps, with lines and numbers at whole stops; in metres. */
export function Levels(props: {
  readonly plan: Plan;
  readonly setupId: string | null;
  readonly clip: string;
  readonly perMetre: number;
}) {
  const seconds = useSettledSeconds();
  const squares = useLevels(props.plan, props.setupId, seconds);
  if (!squares) return null;
  return (
    <g className="levels" clipPath={props.clip}>
      <Bands squares={squares} />
      {squares.step[0] <= FINE_METRES && (
        <Contours squares={squares} perMetre={props.perMetre} plan={props.plan} />
      )}
    </g>
  );
}

const Bands = memo(function Bands({ squares }: { readonly squares: Squares }) {
  return bandPaths(squares).map((path, band) => (
    <path key={STOPS[band]} className={`level level-${band + 1}`} d={path} />
  ));
});

/** What has a name beside it on the overhead: gear that stands, cameras and marks. */
function namedPlaces({ gear, setups, cast }: Plan): readonly (readonly [number, number])[] {
  const points = [
    ...gear.flatMap((each) => ('at' in each ? [each.at] : [])),
    ...setups.map(({ move }) => move.keys[0].position),
  ];
  return [
    ...points.map(([x, , z]) => [x, z] as const),
    ...cast.flatMap(({ marks }) => marks.map(({ at }) => at)),
  ];
}

const Contours = memo(function Contours(props: {
  readonly squares: Squares;
  readonly perMetre: number;
  readonly plan: Plan;
}) {
  const { squares, perMetre, plan } = props;
  const named = useMemo(() => namedPlaces(plan), [plan]);
  const contours = useMemo(() => contoursOf(squares, STOPS), [squares]);
  const size = LETTER_PIXELS / perMetre;
  return (
    <>
      <path
        className="contour"
        d={contours
          .map(({ places }) => `M${places.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`)
          .join('')}
      />
      {contourLabels(contours, LETTERED_METRES, APART_METRES, named).map(({ stop, at: [x, y] }) => (
        <text
          key={`${stop} ${x} ${y}`}
          className="contour-stop"
          x={x}
          y={y + size * 0.35}
          style={{ fontSize: `${size}px`, strokeWidth: `${3 / perMetre}px` }}
          textAnchor="middle"
        >
          {stop === 0 ? '0' : formatSigned(stop, 0)}
        </text>
      ))}
    </>
  );
});
