import { createStore } from 'zustand/vanilla';
import type { SolveAnswer, SolveProgress } from '../../core/clearance/solve/types';
import type { Plan } from '../../core/plan/schema/plan';

/** How the search for a clear night stands. */
export interface SolveState {
  /** Ids of what has to stay, though it could move. */
  readonly stays: ReadonlySet<string>;
  /** Which committed plan `progress` and `answer` are about. */
  readonly forPlan: Plan | null;
  readonly running: boolean;
  /** The last that was heard, kept when the search is stopped. */
  readonly progress: SolveProgress | null;
  readonly answer: SolveAnswer | null;
  /** True after a person stopped the search. */
  readonly stopped: boolean;
  /** Why nothing could be searched, as a sentence. */
  readonly trouble: string | null;
}

/** Nothing is looked for, and nothing found. */
export const NO_SEARCH: Omit<SolveState, 'stays'> = {
  forPlan: null,
  running: false,
  progress: null,
  answer: null,
  stopped: false,
  trouble: null,
};

export const solveStore = createStore<SolveState>()(() => ({ stays: new Set(), ...NO_SEARCH }));

/** Lets things move, or has them stay. */
export function setStays(ids: readonly string[], stay: boolean): void {
  const stays = new Set(solveStore.getState().stays);
  for (const id of ids)
    if (stay) stays.add(id);
    else stays.delete(id);
  solveStore.setState({ stays });
}
