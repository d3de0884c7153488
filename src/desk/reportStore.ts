import { createStore } from 'zustand/vanilla';
import type { Plan } from '../core/plan/schema/plan';
import type { NightReport, SetupReport } from '../core/report/types';

/** What the workers have found out. Formatted by the screens, computed by none of them. */
export interface ReportState {
  /** Of the committed plan, over every setup's whole span; null until the first is done. */
  readonly night: NightReport | null;
  /** The setups at the instants last asked for, in the live plan; the chosen setup comes first. */
  readonly live: readonly SetupReport[] | null;
  /** The night's report in progress: setups done, of how many. */
  readonly reading: { readonly done: number; readonly of: number } | null;
  /** Which plan `night` belongs to. */
  readonly forPlan: Plan | null;
  /** Setups of the night in progress that are done already, by id, for the plan being read. */
  readonly partial: ReadonlyMap<string, SetupReport>;
  /** Which plan `partial` belongs to. */
  readonly partialFor: Plan | null;
  /** True after a person stopped the reading. */
  readonly stopped: boolean;
  /** Why the night's report failed, as a sentence, until it is read again. */
  readonly trouble: string | null;
  /** Why the last report of an instant failed, as a sentence. */
  readonly instantTrouble: string | null;
  /** True while a report is waited for and nothing has been heard of its worker for long. */
  readonly silent: boolean;
}

export const reportStore = createStore<ReportState>()(() => ({
  night: null,
  live: null,
  reading: null,
  forPlan: null,
  partial: new Map(),
  partialFor: null,
  stopped: false,
  trouble: null,
  instantTrouble: null,
  silent: false,
}));
