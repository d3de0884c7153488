import { createStore } from 'zustand/vanilla';

/** What a menu of actions was asked for, and where. */
export interface ContextRequest {
  /** What the actions are for; none for the empty ground. */
  readonly ids: readonly string[];
  /** The place on the roof that was pressed, metres; null where the menu was asked for by keyboard over a thing. */
  readonly spot: readonly [number, number] | null;
  /** Where in the window the menu comes, CSS pixels. */
  readonly clientX: number;
  readonly clientY: number;
  /** The action whose further choices the menu shows; the first page where left out. */
  readonly page?: string | null;
}

interface ContextState {
  readonly open: ContextRequest | null;
  readonly openContext: (request: ContextRequest) => void;
  readonly closeContext: () => void;
}

/** The one menu of actions: whoever draws the roof asks for it, the page shows it. */
export const contextStore = createStore<ContextState>()((set) => ({
  open: null,
  openContext: (open) => set({ open }),
  closeContext: () => set({ open: null }),
}));
