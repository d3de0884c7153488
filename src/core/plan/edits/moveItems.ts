import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { applyMotion, landings } from './applyMotion';
import { entourageOf } from './entourage';
import { spotsOf } from './extent';
import { translation, withinReach } from './motion';
import { tidyMetres } from './tidy';

/**
 * Moves items over the deck by [x, z], metres. What a stand carries takes the stand along; a stand all that it
 * carries, the sandbags over its legs and the ends of cables plugged into any of it; a box, a riser or a roof what
 * stands on it. What stood on something lands on what is under its new place, what hangs keeps its height, and what
 * lamps are aimed at stays. Plugged ends of a moved cable stay with their gear. Locked items stay, unless
 * `evenLocked`. The way is cut short where something would leave the 5 km that a plan may hold.
 */
export function moveItems(
  plan: Plan,
  args: { readonly ids: readonly string[]; readonly by: Spot; readonly evenLocked?: boolean },
): Plan {
  const entourage = entourageOf(plan, args.ids, { evenLocked: args.evenLocked === true, decks: false });
  const spots = [...entourage.carriers.keys()].flatMap((id) => {
    const record = entourage.items.get(id)?.record;
    return record ? spotsOf(record) : [];
  });
  const by: Spot = [
    withinReach(
      spots.map(([x]) => x),
      tidyMetres(args.by[0]),
    ),
    withinReach(
      spots.map(([, z]) => z),
      tidyMetres(args.by[1]),
    ),
  ];
  if (by[0] === 0 && by[1] === 0) return plan;
  const motion = translation(by);
  return applyMotion(plan, entourage, motion, landings(plan, entourage, motion));
}
