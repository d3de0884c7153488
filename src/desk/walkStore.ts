import { createStore } from 'zustand/vanilla';

/** Places from where the roof can be looked at, by name. */
export type Standpoint = 'from above' | 'eye level' | 'from the camera' | 'at the chosen';

interface WalkState {
  /** Where the walk-round was asked to stand last; a new object for every asking. */
  readonly asked: { readonly standpoint: Standpoint } | null;
  /** Takes the walk-round to a standpoint. */
  readonly stand: (standpoint: Standpoint) => void;
}

/** What the page asks of the walk-round's eye. */
export const walkStore = createStore<WalkState>()((set) => ({
  asked: null,
  stand: (standpoint) => set({ asked: { standpoint } }),
}));
