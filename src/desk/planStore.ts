import { type TemporalState, temporal } from 'zundo';
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { PlanFault } from '../core/plan/faults';
import { parsePlan } from '../core/plan/parse';
import type { Plan } from '../core/plan/schema/plan';
import { EMPTY_PLAN } from './emptyPlan';

/** The document: slow, undoable, the only truth. */
export interface PlanState {
  readonly plan: Plan;
  /** Name of the file that the plan was opened from or saved to. */
  readonly fileName: string;
  /** Which opened document this is, told apart in the history too: a file handle belongs to one of them. */
  readonly documentNumber: number;
  /** False until a plan has been restored, opened or begun. */
  readonly opened: boolean;
  /**
   * Makes one named edit, one step of the history. What the schema would refuse is not done:
   * the faults come back instead, and the plan stays as it was.
   */
  readonly edit: (name: string, change: (plan: Plan) => Plan) => readonly PlanFault[];
  readonly undo: () => void;
  readonly redo: () => void;
  /** Opens another plan; undo brings the one before back. */
  readonly openPlan: (plan: Plan, fileName: string) => void;
  /** The plan that the page starts with: there is nothing before it to undo. */
  readonly startWith: (plan: Plan, fileName: string) => void;
  readonly setFileName: (fileName: string) => void;
}

interface Kept {
  readonly plan: Plan;
  readonly fileName: string;
  readonly documentNumber: number;
}

let documents = 0;
const nextDocument = (): number => {
  documents += 1;
  return documents;
};

type PlanStore = StoreApi<PlanState> & { readonly temporal: StoreApi<TemporalState<Kept>> };

export const planStore: PlanStore = createStore<PlanState>()(
  temporal(
    (set, get) => ({
      plan: EMPTY_PLAN,
      fileName: 'new.plan.json',
      documentNumber: 0,
      opened: false,
      edit: (name, change) => {
        const before = get().plan;
        const after = change(before);
        if (after === before) return [];
        const checked = parsePlan(after);
        if (!checked.ok) {
          console.warn(`${name} was not done: ${checked.faults[0]?.sentence ?? ''}`);
          return checked.faults;
        }
        // The edit's own object is kept, not the checked copy: unchanged records stay the same objects.
        set({ plan: after });
        return [];
      },
      undo: () => planStore.temporal.getState().undo(),
      redo: () => planStore.temporal.getState().redo(),
      openPlan: (plan, fileName) => set({ plan, fileName, opened: true, documentNumber: nextDocument() }),
      startWith: (plan, fileName) => {
        set({ plan, fileName, opened: true, documentNumber: nextDocument() });
        planStore.temporal.getState().clear();
      },
      setFileName: (fileName) => {
        const history = planStore.temporal.getState();
        history.pause();
        set({ fileName });
        history.resume();
      },
    }),
    {
      partialize: ({ plan, fileName, documentNumber }): Kept => ({ plan, fileName, documentNumber }),
      equality: (past, current) => past.plan === current.plan,
    },
  ),
);
