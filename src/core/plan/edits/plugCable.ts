import type { Gear } from '../schema/gear';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { anchorOf } from './anchorOf';
import { editRecord } from './editRecord';
import { sameSpot, tidySpot } from './tidy';

export type Cable = Extract<Gear, { readonly kind: 'cable' }>;
/** Which end of a cable: the first point of its path or the last. */
export type CableEnd = 'from' | 'to';

/** Where a cable lies that is plugged into a piece of gear: at its foot, or at that of the stand that carries it. */
export function plugSpot(plan: Plan, id: string): Spot | null {
  const gear = plan.gear.find((entry) => entry.id === id);
  return gear && gear.kind !== 'cable' ? anchorOf(plan, id) : null;
}

/** The cable with one end at a place. */
export function withEnd(cable: Cable, end: CableEnd, spot: Spot): Cable {
  const index = end === 'from' ? 0 : cable.path.length - 1;
  return sameSpot(cable.path[index], spot) ? cable : { ...cable, path: cable.path.with(index, spot) };
}

/** The cable with one end plugged into the gear of an id, or into nothing. */
export function withPlug(cable: Cable, end: CableEnd, to: string | null): Cable {
  const { plugs: before, ...rest } = cable;
  const from = end === 'from' ? to : (before?.from ?? null);
  const other = end === 'to' ? to : (before?.to ?? null);
  if (from === null && other === null) return rest;
  return { ...rest, plugs: { ...(from !== null && { from }), ...(other !== null && { to: other }) } };
}

/**
 * Plugs one end of a cable into a piece of gear: the end comes to lie there and goes along when that is moved.
 * `to: null` pulls it out and leaves it where it lies. What is no cable, or nothing to plug into, changes nothing.
 */
export function plugCable(
  plan: Plan,
  { id, end, to }: { readonly id: string; readonly end: CableEnd; readonly to: string | null },
): Plan {
  const spot = to === null ? null : plugSpot(plan, to);
  if (to !== null && !spot) return plan;
  return editRecord(plan, id, {
    gear: (gear) => {
      if (gear.kind !== 'cable' || (gear.plugs?.[end] ?? null) === to) return gear;
      const plugged = withPlug(gear, end, to);
      return spot ? withEnd(plugged, end, tidySpot(spot)) : plugged;
    },
  });
}

/** The plan with the ends of cables that are plugged into a piece of gear where it is now. */
export function settlePlugs(plan: Plan, id: string): Plan {
  const spot = plugSpot(plan, id);
  if (!spot) return plan;
  const at = tidySpot(spot);
  const gear = plan.gear.map((entry) => {
    if (entry.kind !== 'cable' || !entry.plugs) return entry;
    const first = entry.plugs.from === id ? withEnd(entry, 'from', at) : entry;
    return entry.plugs.to === id ? withEnd(first, 'to', at) : first;
  });
  return gear.some((entry, index) => entry !== plan.gear[index]) ? { ...plan, gear } : plan;
}
