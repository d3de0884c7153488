import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../core/plan/schema/plan';
import type { BlockingFault } from '../../core/report/blockingFaults';
import { blockingFaults } from '../../core/report/castNotices';
import { planStore } from '../planStore';
import type { ToldFault } from './toldFaults';

/** What is wrong with the blocking of a plan: a committed one, perhaps that before the last edit. */
interface FaultsState {
  readonly faults: readonly ToldFault[];
  readonly forPlan: Plan | null;
}

export const faultsStore = createStore<FaultsState>()(() => ({ faults: [], forPlan: null }));

export const useFaults = (): readonly ToldFault[] => useStore(faultsStore, (state) => state.faults);

/** The edit that mends a fault, found anew in the plan as it is now; null where it is mended, or was never to be. */
export const mendOf = ({ sentence, about }: ToldFault): BlockingFault['mend'] =>
  blockingFaults(planStore.getState().plan).find(
    (fault) => fault.about === about && fault.sentence === sentence,
  )?.mend ?? null;
