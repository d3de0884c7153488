import type { Plan } from '../../core/plan/schema/plan';
import { sameData } from '../../core/units/sameData';

function keepOf<Entry extends { readonly id: string }>(
  before: readonly Entry[],
  after: readonly Entry[],
): Entry[] {
  const known = new Map(before.map((entry) => [entry.id, entry]));
  return after.map((entry) => {
    const old = known.get(entry.id);
    return old && sameData(old, entry) ? old : entry;
  });
}

/**
 * The plan `after`, with the records that are as in `before` by identity: whoever remembers by the record goes on.
 * A plan that says the same comes back as `before` itself.
 */
export function keepRecords(before: Plan, after: Plan): Plan {
  if (sameData(before, after)) return before;
  return {
    ...after,
    kit: sameData(before.kit, after.kit) ? before.kit : after.kit,
    pieces: keepOf(before.pieces, after.pieces),
    beats: keepOf(before.beats, after.beats),
    cast: keepOf(before.cast, after.cast),
    gear: keepOf(before.gear, after.gear),
    setups: keepOf(before.setups, after.setups),
  };
}
