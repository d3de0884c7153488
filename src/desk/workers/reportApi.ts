import type { SetupContinuity } from '../../core/continuity/continuity';
import type { Coverage } from '../../core/continuity/coverage';
import type { HeldModel } from '../../core/form/models/heldModel';
import type { Setup } from '../../core/plan/schema/setup';
import type { LensTrial } from '../../core/report/lensTest';
import type { Notice, SetupReport } from '../../core/report/types';
import type { PackedPlan } from '../planWire';

export interface ContinuityAnswer {
  readonly setups: readonly SetupContinuity[];
  readonly coverage: Coverage;
}

/** What the report worker answers. `hold` comes first; the questions are about the plan held. */
export interface ReportApi {
  /** Puts an imported model at hand, by the SHA-256 of its file; it comes before a plan that is to be read with it. */
  readonly holdModel: (sha256: string, model: HeldModel) => void;
  /** Takes the plan over. */
  readonly hold: (packed: PackedPlan) => void;
  /**
   * One setup over its whole span, or at one instant of the action's clock, seconds, brought into its span.
   * Null for an id that the plan lacks, and when the reading was given up.
   */
  readonly read: (setupId: string, atSeconds: number | null) => Promise<SetupReport | null>;
  /**
   * One way to try a lens (see `lensTries`) on a setup, which need not be in the plan held, over its whole span or at one
   * instant, seconds; `tell` hears the done share, 0..1. Null for a way that there is not, and when it was given up.
   */
  readonly tryLens: (
    setup: Setup,
    tryId: string,
    atSeconds: number | null,
    tell: (share: number) => void,
  ) => Promise<LensTrial | null>;
  /** How the plan's setups cut together, and who is covered by which; null when it was given up. */
  readonly continuity: () => Promise<ContinuityAnswer | null>;
  /** What should be known about the plan before trusting its findings. */
  readonly notices: () => readonly Notice[];
  /** Gives up what is being read: something newer is wanted. */
  readonly giveUp: () => void;
}
