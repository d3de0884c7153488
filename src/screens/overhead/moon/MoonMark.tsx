import './moon.css';
import { memo } from 'react';
import { ambientOf } from '../../../core/light/ambient';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { roofBounds } from '../geometry/roof';
import type { Spot } from '../geometry/spots';
import { moonPlace } from './moonPlace';

const RADIUS = 7;
const ARROW = 26;

/** The moon beside the roof where it shines on the action: which way its light goes, and how high it stands. */
export const MoonMark = memo(function MoonMark({
  plan,
  at,
}: {
  readonly plan: Plan;
  readonly at: (spot: Spot) => Spot;
}) {
  const { moon } = ambientOf(plan);
  const [left, top, right, bottom] = roofBounds(plan);
  const place = moon && moonPlace(moon, [...at([left, top]), ...at([right, bottom])]);
  if (!place) return null;
  const [x, y] = place.at;
  const [dx, dy] = place.way;
  const words = `moon, ${formatNumber(place.altitudeDegrees, 0)}°${NBSP}up`;
  const [startX, startY] = [dx * (RADIUS + 3), dy * (RADIUS + 3)];
  const [endX, endY] = [dx * (RADIUS + ARROW), dy * (RADIUS + ARROW)];
  const barb = (turn: number): string =>
    `M${endX} ${endY}l${-dx * 7 + turn * dy * 4} ${-dy * 7 - turn * dx * 4}`;
  return (
    <g className="moon-mark" transform={`translate(${x} ${y})`}>
      <circle r={RADIUS} />
      <path d={`M${startX} ${startY}L${endX} ${endY}${barb(1)}${barb(-1)}`} />
      <text x={RADIUS + 5} y={dy < 0 ? 16 : -7}>
        {words}
      </text>
    </g>
  );
});
