import type { HeadClass } from '../../plan/schema/kit';
import type { Plan } from '../../plan/schema/plan';
import { asin, atan2, hypot } from '../../units/steadyMath';
import { add, length, subtract, unit, type Vec3 } from '../build/vector';
import { carrierOf, type GearOf } from './references';
import { standTop } from './standTop';

/** Where a head hangs in its yoke and which way it looks. */
export interface HeadPlace {
  /** The middle of the housing, on the axis that it tilts about; world metres. */
  readonly pivot: Vec3;
  /** Whether it hangs below what carries it, as from an arm that points down. */
  readonly hangs: boolean;
  /** Unit vector along the axis of the lamp. */
  readonly direction: Vec3;
  readonly headingDegrees: number;
  readonly tiltDegrees: number;
}

/** An arm that falls more steeply than this carries its head below its end, clear of itself; degrees. */
const HANGING_DEGREES = -20;

/** The shortest way from the spigot to the axis that the housing tilts about: it swings free of the yoke's foot. */
export function shortestYokeMetres({ form, size }: HeadClass): number {
  const [, height, depth] = size;
  if (form === 'tube') return height / 2 + 0.03;
  if (form === 'bulb') return height / 2 + 0.02;
  return hypot(height / 2, Math.min(depth / 2, height / 3)) + 0.03;
}

/** From the top of the spigot to the axis that a head's housing tilts about, metres; never shorter than it can be. */
export const yokeMetres = (head: GearOf<'head'>, headClass: HeadClass): number =>
  Math.max(shortestYokeMetres(headClass), head.yokeMetres ?? 0);

/**
 * A head with a place of its own has the middle of its housing there. A carried one stands with its yoke on the
 * spigot or on the end of the arm, and hangs from an arm that points down. The axis goes from the middle of the housing through the aim; a head that is
 * aimed at its own middle looks along heading 0.
 */
export function headPlace(head: GearOf<'head'>, headClass: HeadClass, plan: Plan): HeadPlace {
  const stand = carrierOf(head, plan);
  const hangs = (stand?.arm?.tiltDegrees ?? 0) < HANGING_DEGREES;
  const yoke = yokeMetres(head, headClass);
  const pivot: Vec3 = stand
    ? add(standTop(stand).at, [0, hangs ? -yoke : yoke, 0])
    : 'at' in head.place
      ? head.place.at
      : [0, 0, 0];
  const towards = subtract(head.aim, pivot);
  const direction: Vec3 = length(towards) > 1e-6 ? unit(towards) : [0, 0, -1];
  const degrees = 180 / Math.PI;
  return {
    pivot,
    hangs,
    direction,
    headingDegrees: atan2(direction[0], -direction[2]) * degrees,
    tiltDegrees: asin(Math.max(-1, Math.min(1, direction[1]))) * degrees,
  };
}
