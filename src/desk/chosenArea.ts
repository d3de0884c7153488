import { createStore } from 'zustand/vanilla';
import { itemOf } from '../core/plan/items';
import type { Plan } from '../core/plan/schema/plan';
import { chooseProbe, chosenProbeStore } from './chosenProbe';
import { sessionStore } from './sessionStore';

/** The wet area that is chosen; none while things are. */
export const chosenAreaStore = createStore<{ readonly areaId: string | null }>()(() => ({ areaId: null }));

sessionStore.subscribe(({ selectedIds }) => {
  if (selectedIds.length > 0 && chosenAreaStore.getState().areaId !== null)
    chosenAreaStore.setState({ areaId: null });
});

chosenProbeStore.subscribe(({ probeId }) => {
  if (probeId !== null && chosenAreaStore.getState().areaId !== null)
    chosenAreaStore.setState({ areaId: null });
});

/** Chooses a wet area in place of whatever was chosen, or none. */
export function chooseArea(areaId: string | null): void {
  if (sessionStore.getState().selectedIds.length > 0) sessionStore.getState().setSelectedIds([]);
  chooseProbe(null);
  if (chosenAreaStore.getState().areaId !== areaId) chosenAreaStore.setState({ areaId });
}

/** The id of the chosen area, where the plan has it. */
export const chosenAreaIn = (plan: Plan): string | null => {
  const { areaId } = chosenAreaStore.getState();
  return plan.ground.areas?.some(({ id }) => id === areaId) ? areaId : null;
};

/** Chooses what was made: an item, a meter, or a wet area. */
export function chooseMade(plan: Plan, id: string): void {
  if (itemOf(plan, id)) sessionStore.getState().setSelectedId(id);
  else if (plan.probes?.some((probe) => probe.id === id)) chooseProbe(id);
  else chooseArea(id);
}
