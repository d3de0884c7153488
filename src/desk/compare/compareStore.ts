import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { chooseSetup, setupOf } from '../choose';
import { livePlan } from '../liveStore';
import { planStore } from '../planStore';
import { sessionStore } from '../sessionStore';
import { besidePlace, type PaneCount, type Slots, settledSlots, withSetupAt } from './slots';

/** Which setups are seen side by side in this sitting; none of it is in the plan. */
export interface CompareState {
  readonly count: PaneCount;
  readonly slots: Slots;
}

export const compareStore = createStore<CompareState>()(() => ({
  count: 1,
  slots: { setupIds: [], at: 0 },
}));

export const useCompare = <Part>(select: (state: CompareState) => Part): Part =>
  useStore(compareStore, select);

function settle(): void {
  const plan = livePlan();
  const chosen = setupOf(plan, sessionStore.getState().setupId);
  const { count, slots } = compareStore.getState();
  if (!chosen) return;
  const next = settledSlots(
    plan.setups.map(({ id }) => id),
    chosen.id,
    count,
    slots,
  );
  if (next !== slots) compareStore.setState({ slots: next });
}

/** Sees one setup, two or four at once. */
export function setPaneCount(count: PaneCount): void {
  compareStore.setState({ count });
  settle();
}

/** Puts a setup into a pane; into that of the one that is looked through, it is looked through itself. */
export function putInPane(place: number, setupId: string): void {
  const { slots } = compareStore.getState();
  const next = withSetupAt(slots, place, setupId);
  compareStore.setState({ slots: next });
  if (next.setupIds[next.at] !== sessionStore.getState().setupId) chooseSetup(next.setupIds[next.at]);
}

/** Sees a setup beside the one that is looked through, in as many panes as there are, two at least. */
export function seeBeside(setupId: string): void {
  const { count, slots } = compareStore.getState();
  if (setupId === sessionStore.getState().setupId) {
    if (count === 1) setPaneCount(2);
    return;
  }
  if (slots.setupIds.length > 1 && slots.setupIds.includes(setupId)) return;
  if (count === 1) setPaneCount(2);
  const { slots: now } = compareStore.getState();
  putInPane(besidePlace(now), setupId);
}

/** Keeps the panes with what is looked through and with what the plan still has. */
export function keepCompared(): void {
  planStore.subscribe((state, before) => {
    if (state.plan !== before.plan) settle();
  });
  sessionStore.subscribe((state, before) => {
    if (state.setupId !== before.setupId) settle();
  });
  settle();
}
