import { createStore } from 'zustand/vanilla';

/** What the left column of the Set sheet shows, and what the right one does while nothing is chosen. */
interface SetSheetState {
  readonly left: 'add' | 'things';
  readonly about: 'setup' | 'roof';
  readonly search: string;
}

/** How the Set sheet was left, for when one comes back to it. */
export const setSheetStore = createStore<SetSheetState>()(() => ({
  left: 'add',
  about: 'setup',
  search: '',
}));
