import { createStore } from 'zustand/vanilla';
import type { PlanFault } from '../core/plan/faults';
import type { Plan } from '../core/plan/schema/plan';
import { planStore } from './planStore';

/** A drag in progress: the item, and the plan as it would be. */
export interface Gesture {
  readonly itemId: string;
  readonly draft: Plan;
}

/** What moves sixty times a second; read it with getState outside React wherever it drives a picture. */
export interface LiveState {
  /** The action's clock. */
  readonly seconds: number;
  readonly playing: boolean;
  readonly gesture: Gesture | null;
  readonly setSeconds: (seconds: number) => void;
  readonly setPlaying: (playing: boolean) => void;
  readonly beginGesture: (itemId: string) => void;
  /** Shows the plan as the gesture would leave it; ignored when none has begun. */
  readonly moveGesture: (draft: Plan) => void;
  /** Ends the gesture as one named edit; what the schema refuses comes back as faults and the plan stays. */
  readonly commitGesture: (name: string) => readonly PlanFault[];
  readonly dropGesture: () => void;
}

export const liveStore = createStore<LiveState>()((set, get) => ({
  seconds: 0,
  playing: false,
  gesture: null,
  setSeconds: (seconds) => set({ seconds }),
  setPlaying: (playing) => set({ playing }),
  beginGesture: (itemId) => set({ gesture: { itemId, draft: planStore.getState().plan } }),
  moveGesture: (draft) => {
    const { gesture } = get();
    if (gesture) set({ gesture: { itemId: gesture.itemId, draft } });
  },
  commitGesture: (name) => {
    const { gesture } = get();
    if (!gesture) return [];
    const faults = planStore.getState().edit(name, () => gesture.draft);
    set({ gesture: null });
    return faults;
  },
  dropGesture: () => set({ gesture: null }),
}));

/** The plan as it is seen now: the gesture's draft, else the committed plan. */
export function livePlan(): Plan {
  return liveStore.getState().gesture?.draft ?? planStore.getState().plan;
}
