import type { Notice, SetupReport } from '../../core/report/types';
import type { PackedPlan } from '../planWire';

/** What the report worker answers. `hold` comes first; the questions are about the plan held. */
export interface ReportApi {
  /** Takes the plan over. */
  readonly hold: (packed: PackedPlan) => void;
  /**
   * One setup over its whole span, or at one instant of the action's clock, seconds, brought into its span.
   * Null for an id that the plan lacks, and when the reading was given up.
   */
  readonly read: (setupId: string, atSeconds: number | null) => Promise<SetupReport | null>;
  /** What should be known about the plan before trusting its findings. */
  readonly notices: () => readonly Notice[];
  /** Gives up what is being read: something newer is wanted. */
  readonly giveUp: () => void;
}
