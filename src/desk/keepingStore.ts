import { createStore } from 'zustand/vanilla';

/** Whether this device keeps the plan. */
export interface KeepingState {
  readonly state: 'starting' | 'kept' | 'refused';
}

export const keepingStore = createStore<KeepingState>()(() => ({ state: 'starting' }));
