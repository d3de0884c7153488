import { useStore } from 'zustand';
import type { Plan } from '../core/plan/schema/plan';
import { type LiveState, liveStore } from './liveStore';
import { type PlanState, planStore } from './planStore';
import { type ReportState, reportStore } from './reportStore';
import { type SessionState, sessionStore } from './sessionStore';
import { type ViewState, viewStore } from './viewStore';

export const usePlanState = <Part>(select: (state: PlanState) => Part): Part => useStore(planStore, select);
export const useSession = <Part>(select: (state: SessionState) => Part): Part =>
  useStore(sessionStore, select);
export const useLive = <Part>(select: (state: LiveState) => Part): Part => useStore(liveStore, select);
export const useReports = <Part>(select: (state: ReportState) => Part): Part => useStore(reportStore, select);
export const useViews = <Part>(select: (state: ViewState) => Part): Part => useStore(viewStore, select);

const draftOf = (state: LiveState): Plan | null => state.gesture?.draft ?? null;
const planOf = (state: PlanState): Plan => state.plan;

/** The plan as it is seen now: the gesture's draft, else the committed plan. */
export function useLivePlan(): Plan {
  const draft = useStore(liveStore, draftOf);
  const plan = useStore(planStore, planOf);
  return draft ?? plan;
}
