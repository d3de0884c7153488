import { slotOf } from '../../core/form/photometry/candelaTable';
import type { Distribution } from '../../core/plan/schema/distribution';
import { asin, atan2, cos, sin } from '../../core/units/steadyMath';

/** A table whose angles are those of a type A or B, each from −90 or, mirrored, from 0. */
export type OtherTable = Pick<Distribution, 'verticalDegrees' | 'horizontalDegrees' | 'candela'>;

const RADIANS = Math.PI / 180;
const ROUND_STEP_DEGREES = 5;
/** How finely the angles off the axis may be read again. */
const OFF_STEPS_DEGREES = [2.5, 1, 0.5];

const sineAndCosine = (degrees: number): readonly [number, number] => [
  sin(degrees * RADIANS),
  cos(degrees * RADIANS),
];

/** Where a value lies among angles: the angle before it and how far on to the next; null beyond the ends. */
function between(angles: readonly number[], degrees: number): readonly [number, number] | null {
  const value = angles[0] === 0 ? Math.abs(degrees) : degrees;
  const slack = 1e-9;
  if (value < angles[0] - slack || value > angles[angles.length - 1] + slack) return null;
  if (angles.length === 1) return [0, 0];
  const before = slotOf(angles, value);
  return [before, (value - angles[before]) / (angles[before + 1] - angles[before])];
}

function candelaAt(
  { verticalDegrees, horizontalDegrees, candela }: OtherTable,
  v: number,
  h: number,
): number {
  const [down, along] = [between(verticalDegrees, v), between(horizontalDegrees, h)];
  if (!down || !along) return 0;
  const inRow = (row: readonly number[]): number => {
    const from = row[down[0]];
    return down[1] === 0 ? from : from + (row[down[0] + 1] - from) * down[1];
  };
  const from = inRow(candela[along[0]]);
  return along[1] === 0 ? from : from + (inRow(candela[along[0] + 1]) - from) * along[1];
}

function finestStep(angles: readonly number[]): number {
  const finest = angles.reduce(
    (step, angle, k) => (k === 0 ? step : Math.min(step, angle - angles[k - 1])),
    180,
  );
  return OFF_STEPS_DEGREES.find((step) => step <= finest) ?? 0.5;
}

/**
 * A table of type A or B read again by type C's angles, by straight lines between its own: off the axis as finely as
 * it is, at most by half degrees, and every 5° round it. Type A has its pole upright (vertical angles are latitudes),
 * type B level (horizontal angles are latitudes); positive is right and up as seen from behind the lamp.
 *
 * Source: [lm-63]
 */
export function asTypeC(type: 'A' | 'B', table: OtherTable): OtherTable {
  const step = Math.min(finestStep(table.verticalDegrees), finestStep(table.horizontalDegrees));
  const verticalDegrees = Array.from({ length: 90 / step + 1 }, (_, k) => k * step);
  const horizontalDegrees = Array.from(
    { length: 360 / ROUND_STEP_DEGREES + 1 },
    (_, k) => k * ROUND_STEP_DEGREES,
  );
  const off = verticalDegrees.map(sineAndCosine);
  const candela = horizontalDegrees.map(sineAndCosine).map(([upwards, sideways]) =>
    off.map(([aside, ahead]) => {
      const [right, up] = [aside * sideways, aside * upwards];
      const longitude = atan2(type === 'A' ? right : up, ahead) / RADIANS;
      const latitude = asin(type === 'A' ? up : right) / RADIANS;
      const [v, h] = type === 'A' ? [latitude, longitude] : [longitude, latitude];
      return Number(candelaAt(table, v, h).toPrecision(6));
    }),
  );
  return { verticalDegrees, horizontalDegrees, candela };
}
