import type { RemedyQuestion } from '../../core/clearance/remedies/remediesFor';
import type { Remedy } from '../../core/clearance/remedies/types';
import type { SolveAnswer, SolveProgress, SolveQuestion } from '../../core/clearance/solve/types';
import type { HeldModel } from '../../core/form/models/heldModel';
import type { PackedPlan } from '../planWire';
import type { Hearing } from '../workers/hearing';

/** What the worker of remedies answers. `hold` comes first; the questions are about the plan held. */
export interface RemediesApi extends Hearing {
  /** Puts an imported model at hand, by the SHA-256 of its file. */
  readonly holdModel: (sha256: string, model: HeldModel) => void;
  readonly hold: (packed: PackedPlan) => void;
  /** Remedies for a finding; `tell` hears the done share, 0..1. Null when it was given up. */
  readonly remedies: (
    question: RemedyQuestion,
    tell: (share: number) => void,
  ) => Promise<readonly Remedy[] | null>;
  /** Clears all setups; `tell` hears how far it is. Null when it was given up. */
  readonly solve: (
    question: SolveQuestion,
    tell: (progress: SolveProgress) => void,
  ) => Promise<SolveAnswer | null>;
  /** Gives up what is looked for: something newer is wanted, or nothing. */
  readonly giveUp: () => void;
}
