import type { Plan } from '../schema/plan';
import { standEnd } from '../standEnd';
import { editRecord } from './editRecord';
import { settlePlugs } from './plugCable';
import { tidyPoint } from './tidy';

/**
 * Puts a head, a cloth or a monitor on a stand, or, with null, takes it off, to hang where the stand held it. Plugged
 * ends of cables go along. What cannot be carried, and a stand that is not there, change nothing.
 */
export function putOnStand(
  plan: Plan,
  { id, standId }: { readonly id: string; readonly standId: string | null },
): Plan {
  const standOf = (wanted: string) =>
    plan.gear.flatMap((gear) => (gear.kind === 'stand' && gear.id === wanted ? [gear] : []))[0];
  if (standId !== null && !standOf(standId)) return plan;
  const put = editRecord(plan, id, {
    gear: (gear) => {
      if (!('place' in gear)) return gear;
      const on = 'on' in gear.place ? gear.place.on : null;
      if (on === standId) return gear;
      if (standId !== null) return { ...gear, place: { on: standId } };
      const stand = on === null ? undefined : standOf(on);
      return stand ? { ...gear, place: { at: tidyPoint(standEnd(stand)) } } : gear;
    },
  });
  return put === plan ? plan : settlePlugs(put, id);
}
