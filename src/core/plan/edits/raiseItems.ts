import type { Plan } from '../schema/plan';
import { carrierOf } from './anchorOf';
import { applyMotion, sameLift } from './applyMotion';
import { entourageOf } from './entourage';
import { heightsOf } from './extent';
import { translation, withinReach } from './motion';
import { setStandHeight, standReach } from './setStandHeight';
import { kept, tidyMetres } from './tidy';

/** The stand's spigot raised by so many metres, as far as its class goes. */
function extended(plan: Plan, standId: string, byMetres: number): Plan {
  const stand = plan.gear.find((gear) => gear.id === standId);
  const reach = standReach(plan, standId);
  if (stand?.kind !== 'stand' || !reach) return plan;
  const heightMetres = kept(
    tidyMetres(stand.heightMetres + byMetres),
    Math.min(reach.lowestMetres, stand.heightMetres),
    Math.max(reach.highestMetres, stand.heightMetres),
  );
  return setStandHeight(plan, { id: standId, heightMetres });
}

/**
 * Raises items by so many metres, with what stands on them, down with a negative number. What a stand carries, chosen
 * without its stand, raises the stand's spigot instead, as far as its class goes. Heights end at 5 km. Locked items
 * stay, unless `evenLocked`.
 */
export function raiseItems(
  plan: Plan,
  args: { readonly ids: readonly string[]; readonly byMetres: number; readonly evenLocked?: boolean },
): Plan {
  const wanted = tidyMetres(args.byMetres);
  const evenLocked = args.evenLocked === true;
  const chosen = new Set(args.ids);
  const locked = (id: string): boolean =>
    !evenLocked && plan.gear.some((gear) => gear.id === id && gear.locked === true);
  const stands = new Set<string>();
  const others: string[] = [];
  for (const id of chosen) {
    const carrier = carrierOf(plan, id);
    if (carrier === null) others.push(id);
    else if (!chosen.has(carrier) && !locked(id) && !locked(carrier)) stands.add(carrier);
  }
  let raised = plan;
  for (const stand of stands) raised = extended(raised, stand, wanted);
  const entourage = entourageOf(raised, others, { evenLocked, decks: true });
  const heights = [...entourage.carriers.keys()].flatMap((id) => {
    const record = entourage.items.get(id)?.record;
    return record ? heightsOf(record) : [];
  });
  const by = withinReach(heights, wanted);
  return by === 0 ? raised : applyMotion(raised, entourage, translation([0, 0]), sameLift(by));
}
