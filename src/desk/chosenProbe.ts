import { createStore } from 'zustand/vanilla';
import { sessionStore } from './sessionStore';

/** The meter that is chosen; none while things are. */
export const chosenProbeStore = createStore<{ readonly probeId: string | null }>()(() => ({ probeId: null }));

sessionStore.subscribe(({ selectedIds }) => {
  if (selectedIds.length > 0 && chosenProbeStore.getState().probeId !== null)
    chosenProbeStore.setState({ probeId: null });
});

/** Chooses a meter in place of whatever was chosen, or none. */
export function chooseProbe(probeId: string | null): void {
  if (sessionStore.getState().selectedIds.length > 0) sessionStore.getState().setSelectedIds([]);
  if (chosenProbeStore.getState().probeId !== probeId) chosenProbeStore.setState({ probeId });
}
