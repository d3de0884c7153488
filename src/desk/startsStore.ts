import { createStore } from 'zustand/vanilla';

/** Whether the sheet of starting roofs lies over the page. */
export interface StartsState {
  readonly open: boolean;
  readonly setOpen: (open: boolean) => void;
}

export const startsStore = createStore<StartsState>()((set) => ({
  open: false,
  setOpen: (open) => set({ open }),
}));

/** Shows what a new plan can begin with. */
export const openStarts = (): void => startsStore.getState().setOpen(true);
