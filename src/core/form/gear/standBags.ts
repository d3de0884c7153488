import type { Gear } from '../../plan/schema/gear';
import { standingAt } from '../build/placement';
import type { Vec3 } from '../build/vector';
import { type OwnPart, ownPart } from './part';
import { lobeOf } from './sandbag';

/** A place on the axis of a leg, in the stand's own frame. */
export interface PlaceOnLeg {
  readonly at: Vec3;
  /** Compass way of the leg from the stand's own heading. */
  readonly headingDegrees: number;
  /** Of the leg's tube, metres. */
  readonly radius: number;
}

type Bags = NonNullable<Extract<Gear, { kind: 'stand' }>['bags']>;

/** Shares of the way from the column to a foot between which bags lie; where one of few lies. */
const NEAREST = 0.3;
const FARTHEST = 0.86;
const FIRST = 0.62;

/** Where each bag lies: which leg, and what share of the way out to its foot. Leg by leg, and then a round further in. */
export function bagPlaces(count: number): readonly { readonly leg: number; readonly share: number }[] {
  const rounds = Math.ceil(count / 3);
  return Array.from({ length: count }, (_, k) => {
    const round = Math.floor(k / 3);
    const share = rounds === 1 ? FIRST : FARTHEST - ((FARTHEST - NEAREST) * round) / (rounds - 1);
    return { leg: k % 3, share };
  });
}

/** How far the middle of a lobe lies beside the axis of its leg, metres. */
export const lobeAside = (kilograms: number, legRadius: number): number =>
  legRadius + lobeOf(kilograms).width * 0.5;

/**
 * Saddle bags over the legs of a stand, in its own frame: a lobe on either side of the leg, hung from a strap over it
 * or lying on the ground where the leg is too low to hang from.
 */
export function bagsOnLegs(bags: Bags, placeOf: (leg: number, share: number) => PlaceOnLeg): OwnPart[] {
  const { width, height, length } = lobeOf(bags.kilograms);
  const places = bagPlaces(bags.count).map(({ leg, share }) => placeOf(leg, share));
  const strapped = places.map(({ at, headingDegrees, radius }) => {
    const over = at[1] + radius;
    const middle = Math.max(height / 2, over - height * 0.45);
    const aside = lobeAside(bags.kilograms, radius);
    const placement = standingAt([at[0], 0, at[2]], headingDegrees);
    return { over, middle, aside, placement, radius };
  });
  const lobes = ownPart('bags', { substance: 'black cloth' }, (builder) => {
    for (const { middle, aside, placement } of strapped) {
      for (const side of [-aside, aside]) {
        const ball = ownPart('bags', { substance: 'black cloth' }, (each) => {
          each.ball([side, middle, 0], [width / 2, height / 2, length / 2], 5, 8);
        });
        builder.include(ball.builder.finish(ball.look), placement);
      }
    }
  });
  const straps = ownPart('bags', { substance: 'rubber', smooth: false }, (builder) => {
    for (const { over, middle, aside, placement } of strapped) {
      const thick = width * 0.05;
      const level = Math.max(over, middle + height * 0.4) + thick / 2;
      builder.box([0, level, 0], [2 * aside, thick, width * 0.3], placement);
    }
  });
  return [lobes, straps];
}
