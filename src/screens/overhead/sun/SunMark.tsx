import './sun.css';
import type { SunOver } from '../../../core/night/dusk/sunOver';
import { nightClock, wallTime } from '../../../core/night/times/nightClock';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatDegrees } from '../../../core/units/angles';
import { NBSP } from '../../../core/units/numbers';
import { roofBounds } from '../geometry/roof';
import type { Bounds, Spot } from '../geometry/spots';
import { besideRoof } from './besideRoof';
import { useSunShown } from './useSunShown';

const RADIUS = 7;
const RAYS = [0, 45, 90, 135, 180, 225, 270, 315] as const;

/** Words stand on the side of the sun that is away from the roof, two lines of them. */
const below = ([, wayY]: Spot): number => (wayY < 0 ? 26 : -32);

const degrees = (value: number): string => formatDegrees(value, 0);

/** A line from beyond the roof across all of it, along a way of light. */
function Across({ sun, box, name }: { readonly sun: SunOver; readonly box: Bounds; readonly name: string }) {
  const place = besideRoof(sun.way, box);
  if (!place) return null;
  const { at, opposite, way } = place;
  const [x, y] = opposite;
  const barb = (turn: number): string =>
    `M${x} ${y}l${-way[0] * 9 + turn * way[1] * 5} ${-way[1] * 9 - turn * way[0] * 5}`;
  return <path className={name} d={`M${at[0]} ${at[1]}L${x} ${y}${barb(1)}${barb(-1)}`} />;
}

/** The sun beside the roof with the way of its light at the time that is looked at, and the way of its last. */
export function SunMark({ plan, at }: { readonly plan: Plan; readonly at: (spot: Spot) => Spot }) {
  const found = useSunShown(plan);
  if (!found) return null;
  const { sun, last } = found;
  const clock = nightClock(plan);
  const [left, top, right, bottom] = roofBounds(plan);
  const box: Bounds = [...at([left, top]), ...at([right, bottom])];
  const isUp = sun.altitude > 0;
  const own = besideRoof(sun.way, box);
  const end = besideRoof(last.way, box);
  const words = `sun ${degrees(sun.altitude)}${NBSP}up at ${wallTime(clock, sun.minutes)}, ${degrees(sun.azimuth)}`;
  const lastWords = `last light ${wallTime(clock, last.minutes)}, ${degrees(last.azimuth)}`;
  const middle = (box[0] + box[2]) / 2;
  const anchor = ([x]: Spot): 'start' | 'end' => (x < middle ? 'start' : 'end');
  return (
    <g className="sun-mark">
      <Across sun={last} box={box} name="last-light" />
      {isUp ? <Across sun={sun} box={box} name="sun-way" /> : null}
      {!isUp && end ? (
        <text x={end.at[0]} y={end.at[1] + below(end.way)} textAnchor={anchor(end.at)}>
          {lastWords}
        </text>
      ) : null}
      {isUp && own ? (
        <g transform={`translate(${own.at[0]} ${own.at[1]})`}>
          <circle r={RADIUS} />
          {RAYS.map((turn) => (
            <path
              key={turn}
              className="ray"
              transform={`rotate(${turn})`}
              d={`M0 ${-RADIUS - 2.5}V${-RADIUS - 6}`}
            />
          ))}
          <text y={below(own.way)} textAnchor={anchor(own.at)}>
            {words}
            <tspan x={0} dy={14}>
              {lastWords}
            </tspan>
          </text>
        </g>
      ) : null}
    </g>
  );
}
