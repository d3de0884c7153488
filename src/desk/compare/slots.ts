/** How many setups are seen at once. */
export type PaneCount = 1 | 2 | 4;

/** The setups that are seen at once, in their places, and the place of the one that is looked through. */
export interface Slots {
  readonly setupIds: readonly string[];
  readonly at: number;
}

/**
 * The same panes after something has changed: each keeps its place as long as its setup is in the plan. A setup that is
 * newly looked through takes the place of the one before; panes that are missing are filled with the setups that follow
 * it in the plan's order, round the end.
 */
export function settledSlots(
  planIds: readonly string[],
  chosenId: string,
  count: PaneCount,
  before: Slots,
): Slots {
  const kept = [...new Set(before.setupIds)].filter((id) => planIds.includes(id));
  const most = Math.min(count, planIds.length);
  // With fewer panes the one that is looked through stays, and those before the others.
  const wanted = kept.includes(chosenId) ? kept : replaced(kept, Math.min(before.at, kept.length), chosenId);
  const others = wanted.filter((id) => id !== chosenId).slice(0, most - 1);
  const setupIds = wanted.filter((id) => id === chosenId || others.includes(id));
  const from = planIds.indexOf(chosenId);
  for (let step = 1; setupIds.length < most; step += 1) {
    const next = planIds[(from + step) % planIds.length];
    if (!setupIds.includes(next)) setupIds.push(next);
  }
  const at = setupIds.indexOf(chosenId);
  const isSame =
    at === before.at &&
    setupIds.length === before.setupIds.length &&
    setupIds.every((id, k) => id === before.setupIds[k]);
  return isSame ? before : { setupIds, at };
}

const replaced = (ids: readonly string[], place: number, id: string): readonly string[] => [
  ...ids.slice(0, place),
  id,
  ...ids.slice(place + 1),
];

/** The panes with another setup in one place; a setup that has a place already changes places with it. */
export function withSetupAt({ setupIds, at }: Slots, place: number, setupId: string): Slots {
  const old = setupIds.indexOf(setupId);
  if (place < 0 || place >= setupIds.length || old === place) return { setupIds, at };
  const chosenId = setupIds[at];
  const next = setupIds.map((id, k) => (k === place ? setupId : k === old ? setupIds[place] : id));
  return { setupIds: next, at: old < 0 ? at : next.indexOf(chosenId) };
}

/** Where a setup goes that is put beside the one that is looked through: the first place that is not that one's. */
export const besidePlace = ({ at }: Slots): number => (at === 0 ? 1 : 0);
