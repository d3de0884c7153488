import { createStore } from 'zustand/vanilla';

/** Whether this device keeps the plans, and why not. */
export interface KeepingState {
  /**
   * `full`: there is no room left. `refused`: the browser gives no storage. `held`: a tab with an older Standclear is in
   * the way. `newer`: a newer Standclear has the plans of this device.
   */
  readonly state: 'starting' | 'kept' | 'full' | 'refused' | 'held' | 'newer';
  /** True while a writing has been on its way for long: the edits since are not on the disk. */
  readonly slow: boolean;
}

export const keepingStore = createStore<KeepingState>()(() => ({ state: 'starting', slow: false }));
