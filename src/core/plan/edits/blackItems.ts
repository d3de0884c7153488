import type { Gear } from '../schema/gear';
import type { Plan } from '../schema/plan';
import { changed } from './motion';

function withBlack(gear: Gear, blacked: boolean): Gear {
  if ((gear.blacked === true) === blacked) return gear;
  if (blacked) return { ...gear, blacked: true };
  const { blacked: _, ...bare } = gear;
  return bare;
}

/** Puts black tape or cloth over gear, or takes it off. What is no gear stays as it is. */
export function blackItems(
  plan: Plan,
  { ids, blacked }: { readonly ids: readonly string[]; readonly blacked: boolean },
): Plan {
  const chosen = new Set(ids);
  const gear = changed(plan.gear, (entry) => (chosen.has(entry.id) ? withBlack(entry, blacked) : entry));
  return gear === plan.gear ? plan : { ...plan, gear };
}
