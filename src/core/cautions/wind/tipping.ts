import { directionOf, dot, type Vec3 } from '../../form/build/vector';
import { bearingOf } from '../../plan/runs';
import { hypot } from '../../units/steadyMath';
import { windOfPressure } from './drag';

/** Weight of a kilogram, N. Source: common practice, no source */
export const NEWTONS_PER_KILOGRAM = 9.81;

/** Something with a mass, at its middle; world metres. */
export interface Mass {
  readonly kilograms: number;
  readonly at: Vec3;
}

/**
 * Something that stands in the wind. A sheet is pushed along its normal; what has no normal is pushed along the wind,
 * whichever way that blows.
 */
export interface Sail {
  /** Drag coefficient times area, m². */
  readonly dragArea: number;
  /** Where the push acts, world metres. */
  readonly at: Vec3;
  readonly normal: Vec3 | null;
}

/** What stands on feet: their outline is convex, world metres. */
export interface Standing {
  readonly feet: readonly Vec3[];
  readonly masses: readonly Mass[];
  readonly sails: readonly Sail[];
}

/** Winds are tried in so many headings, and level, rising and falling by so much: over a roof it does not keep level. */
const HEADINGS = 72;
/** Source: common practice, no source */
const RISES_DEGREES = [0, 10, -10] as const;

interface Blow {
  readonly way: Vec3;
  readonly headingDegrees: number;
}

const WINDS: readonly Blow[] = RISES_DEGREES.flatMap((rise) =>
  Array.from({ length: HEADINGS }, (_, k): Blow => {
    const headingDegrees = (360 * k) / HEADINGS;
    return { way: directionOf(headingDegrees, rise), headingDegrees };
  }),
);

/**
 * A sheet has its full push from where the wind meets it at 30 degrees, and less in proportion to the sine below that:
 * square plates at a slant are pushed about so, from memory. Source: common practice, no source
 */
const FULL_PUSH_SINE = 0.5;

const shareOf = (wind: Vec3, normal: Vec3): number =>
  Math.min(Math.max(dot(wind, normal) / FULL_PUSH_SINE, -1), 1);

/** A side of the outline of feet: it tips over it. */
interface Side {
  readonly at: Vec3;
  /** Level unit vector out over it. */
  readonly out: Vec3;
}

function sidesOf(feet: readonly Vec3[]): readonly Side[] {
  const middle = feet.reduce(
    ([x, z], foot) => [x + foot[0] / feet.length, z + foot[2] / feet.length],
    [0, 0],
  );
  return feet.flatMap((from, k): Side[] => {
    const to = feet[(k + 1) % feet.length];
    const [dx, dz] = [to[0] - from[0], to[2] - from[2]];
    const length = hypot(dx, dz);
    if (length === 0) return [];
    const sign = (middle[0] - from[0]) * -dz + (middle[1] - from[2]) * dx > 0 ? -1 : 1;
    return [{ at: from, out: [(sign * -dz) / length, 0, (sign * dx) / length] }];
  });
}

/** How far inside of a side a place lies, metres. */
const inside = ({ at, out }: Side, place: Vec3): number =>
  (at[0] - place[0]) * out[0] + (at[2] - place[2]) * out[2];

/** What weight holds against tipping over a side, N m. */
const holding = (side: Side, masses: readonly Mass[]): number =>
  masses.reduce((sum, { kilograms, at }) => sum + kilograms * NEWTONS_PER_KILOGRAM * inside(side, at), 0);

/** What a wind of one N/m² along a heading does towards tipping over a side, N m. */
function pushing(side: Side, sails: readonly Sail[], wind: Vec3): number {
  let moment = 0;
  for (const { dragArea, at, normal } of sails) {
    const push = normal ? dragArea * shareOf(wind, normal) : dragArea;
    const [x, y, z] = normal ?? wind;
    // What it pushes outward acts at its height, what it lifts at its distance from the side.
    moment += push * ((x * side.out[0] + z * side.out[2]) * (at[1] - side.at[1]) + y * inside(side, at));
  }
  return moment;
}

interface Worst {
  /** Moment of a wind of one N/m² towards tipping over a side, N m; 0 at least. */
  readonly moment: number;
  /** Which way that wind blows, compass degrees; null where none tips it. */
  readonly headingDegrees: number | null;
}

/** The worst that a wind of one N/m² does towards tipping over a side, over all headings. */
function worst(side: Side, sails: readonly Sail[]): Worst {
  let found: Worst = { moment: 0, headingDegrees: null };
  for (const { way, headingDegrees } of WINDS) {
    const moment = pushing(side, sails, way);
    if (moment > found.moment) found = { moment, headingDegrees };
  }
  return found;
}

/** The wind that tips something over. */
interface Tipping {
  /** Infinity for none, 0 where it falls by itself. */
  readonly metresPerSecond: number;
  /** Which way the wind blows that tips it first, or which way it falls by itself, compass degrees; null for none. */
  readonly headingDegrees: number | null;
}

/**
 * The least wind that tips it over, from the worst heading over the worst side: where the moment of the push about a
 * side of its feet is that of its weight. It is taken to be rigid and not to slide. Source: [tipping]
 */
export function tippingOf({ feet, masses, sails }: Standing): Tipping {
  let pressure = Number.POSITIVE_INFINITY;
  let headingDegrees: number | null = null;
  for (const side of sidesOf(feet)) {
    const held = holding(side, masses);
    if (held <= 0)
      return { metresPerSecond: 0, headingDegrees: bearingOf([0, 0], [side.out[0], side.out[2]]) };
    const pushed = worst(side, sails);
    if (pushed.moment > 0 && held / pushed.moment < pressure) {
      pressure = held / pushed.moment;
      headingDegrees = pushed.headingDegrees;
    }
  }
  return {
    metresPerSecond: pressure === Number.POSITIVE_INFINITY ? pressure : windOfPressure(pressure),
    headingDegrees,
  };
}

/** The least wind, m/s, that tips it over; see `tippingOf`. */
export const tippingWind = (standing: Standing): number => tippingOf(standing).metresPerSecond;

/**
 * How many kilograms over the middle of its feet, or evenly over its legs, hold it against a pressure of wind, N/m²,
 * with so much more moment than is needed; 0 where it holds by itself. Source: [tipping]
 */
export function ballastNeeded({ feet, masses, sails }: Standing, pressure: number, safety: number): number {
  const middle: Vec3 = [
    feet.reduce((sum, [x]) => sum + x / feet.length, 0),
    0,
    feet.reduce((sum, [, , z]) => sum + z / feet.length, 0),
  ];
  return sidesOf(feet).reduce((most, side) => {
    const lacks = safety * pressure * worst(side, sails).moment - holding(side, masses);
    return Math.max(most, lacks / (NEWTONS_PER_KILOGRAM * inside(side, middle)));
  }, 0);
}
