import { createStore } from 'zustand/vanilla';
import type { Kept } from '../keptList';

export interface OfflineState {
  /** How much of the page works without a network; null until that is known, and where the browser keeps nothing. */
  readonly kept: Kept | null;
  /** Whether a newer build of the page is ready to be used. */
  readonly isNewerHere: boolean;
}

/** What is known of the page without a network, for whoever says so. */
export const offlineStore = createStore<OfflineState>()(() => ({ kept: null, isNewerHere: false }));
