import type { Notice, SetupReport } from '../../core/report/types';
import type { PackedPlan } from '../planWire';

/** One setup's report, with what should be known about the plan before trusting it. */
export interface SetupAnswer {
  readonly setup: SetupReport;
  readonly notices: readonly Notice[];
}

/** What the report worker answers. `hold` comes first; the questions are about the plan held. */
export interface ReportApi {
  /** Takes the plan over. */
  readonly hold: (packed: PackedPlan) => void;
  /** One setup over its whole span, or at one instant of the action's clock, seconds. Null for an id the plan lacks. */
  readonly read: (setupId: string, atSeconds: number | null) => SetupAnswer | null;
}
