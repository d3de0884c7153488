import { type TemporalState, temporal } from 'zundo';
import { createStore, type StoreApi } from 'zustand/vanilla';
import { editFaults } from '../core/plan/editFaults';
import type { PlanFault } from '../core/plan/faults';
import type { Plan } from '../core/plan/schema/plan';
import { EMPTY_PLAN } from './emptyPlan';
import { newPlanId } from './plans/planId';
import { keepRecords } from './plans/same';

/** The document: slow, undoable, the only truth. */
export interface PlanState {
  readonly plan: Plan;
  /** Name of the file that the plan was opened from or saved to. */
  readonly fileName: string;
  /** Which of the plans that this device keeps it is; each has a history of its own. */
  readonly planId: string;
  /** A number for each plan in this sitting: what is remembered about one of them goes by it. */
  readonly documentNumber: number;
  /** The plan as this sitting began with it, also where its history no longer reaches back to it. */
  readonly beganWith: Plan;
  /** False until a plan has been restored, opened or begun. */
  readonly opened: boolean;
  /** Counts the edits, and names the last one: what undo and redo do, and what is opened, is none. */
  readonly edits: number;
  readonly editName: string;
  /**
   * Makes one named edit, one step of the history. What the schema would refuse is not done:
   * the faults come back instead, and the plan stays as it was.
   */
  readonly edit: (name: string, change: (plan: Plan) => Plan) => readonly PlanFault[];
  readonly undo: () => void;
  readonly redo: () => void;
  /**
   * Opens another plan, new unless its id is given. Undo does not lead from one plan into another: a plan that was open
   * earlier in this sitting comes back with its own history, and what has changed in it meanwhile is one step more.
   */
  readonly openPlan: (plan: Plan, fileName: string, planId?: string) => void;
  /** The plan that the page starts with. */
  readonly startWith: (plan: Plan, fileName: string, planId?: string) => void;
  readonly setFileName: (fileName: string) => void;
  /** Goes on with the open plan under another id and title, its history too; what is kept under the old id is left alone. */
  readonly branchOff: (planId: string, title: string) => void;
}

interface Step {
  readonly plan: Plan;
}

/**
 * So many steps back a history goes; then the oldest falls off. Each holds on to its plan and to the shapes of what it
 * changed: some 10 kB among 2,000 items and 50 kB where a stand moves with all on it, so that an hour of edits, one every
 * seven seconds, is held whole and takes 25 MB at most, and a day of them no more.
 */
export const HISTORY_STEPS = 500;

/** A plan that was open in this sitting, as it was left. */
export interface Sitting extends Step {
  readonly fileName: string;
  readonly beganWith: Plan;
  readonly past: readonly Partial<Step>[];
  readonly future: readonly Partial<Step>[];
}

const numbers = new Map<string, number>();

function numberOf(planId: string): number {
  const number = numbers.get(planId) ?? numbers.size + 1;
  numbers.set(planId, number);
  return number;
}

const sittings = new Map<string, Sitting>();

/** The plans that were open in this sitting and are not now, by id. */
export const sittingsLeft = (): ReadonlyMap<string, Sitting> => sittings;

/** Forgets a plan that was open, when it is gone for good. */
export const forgetSitting = (planId: string): void => void sittings.delete(planId);

/** What the store holds of a plan with which a sitting begins. */
const begun = (planId: string, plan: Plan, fileName: string): Partial<PlanState> => ({
  plan,
  beganWith: plan,
  fileName,
  planId,
  documentNumber: numberOf(planId),
  opened: true,
});

type PlanStore = StoreApi<PlanState> & { readonly temporal: StoreApi<TemporalState<Step>> };

/** The history with which a plan is opened, and the plan by the identity that the history knows. */
function takeUp(planId: string, plan: Plan): Omit<Sitting, 'fileName'> {
  const sitting = sittings.get(planId);
  sittings.delete(planId);
  if (!sitting) return { plan, beganWith: plan, past: [], future: [] };
  const kept = keepRecords(sitting.plan, plan);
  if (kept === sitting.plan) return sitting;
  const past = [...sitting.past, { plan: sitting.plan }].slice(-HISTORY_STEPS);
  return { plan: kept, beganWith: sitting.beganWith, past, future: [] };
}

export const planStore: PlanStore = createStore<PlanState>()(
  temporal(
    (set, get) => {
      /** Sets what is no step of the history, and the history itself. */
      const setWith = (
        state: Partial<PlanState>,
        past: readonly Partial<Step>[],
        future: readonly Partial<Step>[],
      ): void => {
        const history = planStore.temporal.getState();
        history.pause();
        // Whoever hears of the new plan finds its own history there.
        planStore.temporal.setState({ pastStates: [...past], futureStates: [...future] });
        set(state);
        history.resume();
      };
      return {
        plan: EMPTY_PLAN,
        beganWith: EMPTY_PLAN,
        fileName: 'new.plan.json',
        planId: newPlanId(),
        documentNumber: 0,
        opened: false,
        edits: 0,
        editName: '',
        edit: (name, change) => {
          const { plan: before, edits } = get();
          const after = change(before);
          if (after === before) return [];
          const faults = editFaults(before, after);
          if (faults.length > 0) {
            console.warn(`${name} was not done: ${faults[0]?.sentence ?? ''}`);
            return faults;
          }
          set({ plan: after, edits: edits + 1, editName: name });
          return [];
        },
        undo: () => planStore.temporal.getState().undo(),
        redo: () => planStore.temporal.getState().redo(),
        openPlan: (plan, fileName, planId = newPlanId()) => {
          const before = get();
          const { pastStates: past, futureStates: future } = planStore.temporal.getState();
          if (before.opened) {
            const { plan: left, beganWith, fileName: name } = before;
            sittings.set(before.planId, { plan: left, beganWith, fileName: name, past, future });
          }
          const taken = takeUp(planId, plan);
          setWith(
            { ...begun(planId, taken.plan, fileName), beganWith: taken.beganWith },
            taken.past,
            taken.future,
          );
        },
        startWith: (plan, fileName, planId = newPlanId()) => setWith(begun(planId, plan, fileName), [], []),
        setFileName: (fileName) => set({ fileName }),
        branchOff: (planId, title) => {
          const { pastStates, futureStates } = planStore.temporal.getState();
          const titles = new Map<Plan, Plan>();
          const titled = (plan: Plan): Plan => {
            const known = titles.get(plan) ?? { ...plan, title };
            titles.set(plan, known);
            return known;
          };
          const all = (steps: readonly Partial<Step>[]): Partial<Step>[] =>
            steps.map(({ plan }) => (plan ? { plan: titled(plan) } : {}));
          const { plan, beganWith, documentNumber } = get();
          numbers.set(planId, documentNumber);
          setWith(
            { planId, plan: titled(plan), beganWith: titled(beganWith) },
            all(pastStates),
            all(futureStates),
          );
        },
      };
    },
    {
      limit: HISTORY_STEPS,
      partialize: ({ plan }): Step => ({ plan }),
      equality: (past, current) => past.plan === current.plan,
    },
  ),
);
