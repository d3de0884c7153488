import { itemsOf } from '../items';
import type { Gear } from '../schema/gear';
import type { Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { addItem } from './addItem';
import { freeId } from './freeId';
import { freeLabel } from './freeLabel';
import { changed } from './motion';
import { tidyHeading, tidyPoint } from './tidy';

/** Width, height of the push bar, length of a dolly. Source: common practice, no source */
export const DOLLY_SIZE = [0.66, 1.05, 1.2] as const;

/** A dolly that nobody rides on stands where it was put. */
export function freed(gear: Gear): Gear {
  if (gear.kind !== 'dolly' || gear.rides === undefined) return gear;
  const { rides: _, ...rest } = gear;
  return rest;
}

/**
 * Puts a setup's camera on a dolly, or takes whoever rides on it off. A camera rides on one dolly: another that it
 * rode on stays behind. Ids that the plan does not have change nothing.
 */
export function setRides(
  plan: Plan,
  { id, setupId }: { readonly id: string; readonly setupId: string | null },
): Plan {
  if (setupId !== null && !plan.setups.some((setup) => setup.id === setupId)) return plan;
  if (!plan.gear.some((gear) => gear.id === id && gear.kind === 'dolly')) return plan;
  const gear = changed(plan.gear, (entry) => {
    if (entry.kind !== 'dolly') return entry;
    if (entry.id !== id) return setupId !== null && entry.rides === setupId ? freed(entry) : entry;
    if (setupId === null) return freed(entry);
    return entry.rides === setupId ? entry : { ...entry, rides: setupId };
  });
  return gear === plan.gear ? plan : { ...plan, gear };
}

/** Puts a new dolly in the plan with a setup's camera on it; the same plan where there is no such setup or no room. */
export function putDolly(
  plan: Plan,
  args: { readonly setupId: string; readonly at: Point; readonly headingDegrees: number },
): Plan {
  if (!plan.setups.some((setup) => setup.id === args.setupId)) return plan;
  const id = freeId(
    itemsOf(plan).map(({ record }) => record),
    'dolly',
  );
  const after = addItem(plan, {
    section: 'gear',
    record: {
      kind: 'dolly',
      id,
      label: freeLabel(plan, 'Dolly'),
      at: tidyPoint(args.at),
      headingDegrees: tidyHeading(args.headingDegrees),
      size: [...DOLLY_SIZE],
    },
  });
  return after === plan ? plan : setRides(after, { id, setupId: args.setupId });
}
