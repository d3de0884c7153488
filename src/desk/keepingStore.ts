import { createStore } from 'zustand/vanilla';

/** Whether this device keeps the plans, and why not. */
export interface KeepingState {
  /**
   * `full`: there is no room left. `refused`: the browser gives no storage. `held`: a tab with an older Standclear is in
   * the way. `newer`: a newer Standclear has the plans of this device.
   */
  readonly state: 'starting' | 'kept' | 'full' | 'refused' | 'held' | 'newer';
}

export const keepingStore = createStore<KeepingState>()(() => ({ state: 'starting' }));
