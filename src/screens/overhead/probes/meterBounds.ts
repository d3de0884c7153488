import type { Plan } from '../../../core/plan/schema/plan';
import type { Bounds, Spot } from '../geometry/spots';
import { textWidth } from '../measureText';

/** A meter's ring, and beside it its name over what it reads, pixels; `wide` is the room of a reading, by eye. */
export const METER = { ring: 12, above: 14, below: 16, wide: 100 } as const;

/** What the meters and their words take of the drawing, pixels, so that no other name lies there. */
export const meterBounds = (
  { probes = [] }: Pick<Plan, 'probes'>,
  at: (spot: Spot) => Spot,
): readonly Bounds[] =>
  probes.map((probe): Bounds => {
    const [x, y] = at([probe.at[0], probe.at[2]]);
    const wide = Math.max(METER.wide, textWidth(probe.label, 'mark', false));
    return [x - METER.ring, y - METER.above, x + METER.ring + wide, y + METER.below];
  });
