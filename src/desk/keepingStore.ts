import { createStore } from 'zustand/vanilla';
import type { Plan } from '../core/plan/schema/plan';

/** Whether this device keeps the plan. */
export interface KeepingState {
  /** `elsewhere`: another tab keeps its own, and this one does not write over it. */
  readonly state: 'starting' | 'kept' | 'refused' | 'elsewhere';
  /** The plan that is safe outside of this page, kept or in a file; what differs from it would be lost with the page. */
  readonly safePlan: Plan | null;
}

export const keepingStore = createStore<KeepingState>()(() => ({ state: 'starting', safePlan: null }));
