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
  /** Who has every edit: the shelf, or where it has not, a file. */
  readonly saved: 'shelf' | 'file' | 'nobody';
}

export const keepingStore = createStore<KeepingState>()(() => ({
  state: 'starting',
  slow: false,
  saved: 'shelf',
}));

/** What has become of the plan, as a sentence beside whatever went wrong: saved is only said of all of it. */
export function savedSentence({ state, saved }: Pick<KeepingState, 'state' | 'saved'>): string {
  if (saved === 'file') return 'The plan is saved as a file.';
  return saved === 'shelf' && state === 'kept'
    ? 'The plan is saved on this device.'
    : 'The plan is not yet saved: save it as a file.';
}
