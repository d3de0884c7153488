import { useStore } from 'zustand';
import type { WetArea } from '../../../core/plan/schema/ground';
import type { Plan } from '../../../core/plan/schema/plan';
import { chosenAreaStore } from '../../../desk/chosenArea';

/** The chosen area, where the plan has it. */
export function useChosenArea(plan: Plan): WetArea | null {
  const areaId = useStore(chosenAreaStore, (state) => state.areaId);
  return plan.ground.areas?.find(({ id }) => id === areaId) ?? null;
}
