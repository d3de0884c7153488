import type { SquareReading } from '../../core/clearance/ground/groundAt';
import type { LimitAnswer } from '../../core/clearance/ground/heightLimit';
import type { GroundAnswer, GroundQuestion } from '../../core/clearance/ground/types';
import type { UsefulAnswer, UsefulQuestion } from '../../core/clearance/useful/types';
import type { HeldModel } from '../../core/form/models/heldModel';
import type { PackedPlan } from '../planWire';
import type { Hearing } from '../workers/hearing';

/** What the worker of clear ground reckons square by square; of each only the newest is wanted. */
export type GroundWork = 'clear' | 'limits' | 'useful';

/** What the worker of clear ground answers. `hold` comes first; the questions are about the plan held. */
export interface GroundApi extends Hearing {
  /** Puts an imported model at hand, by the SHA-256 of its file. */
  readonly holdModel: (sha256: string, model: HeldModel) => void;
  readonly hold: (packed: PackedPlan) => void;
  /** Each null when it was given up. */
  readonly clear: (question: GroundQuestion) => Promise<GroundAnswer | null>;
  readonly limits: (question: Omit<GroundQuestion, 'of'>) => Promise<LimitAnswer | null>;
  readonly useful: (question: UsefulQuestion) => Promise<UsefulAnswer | null>;
  /** What each setup makes of a thing around [x, z]; null beside the decks, a sentence where there is no answer. */
  readonly at: (question: GroundQuestion, spot: readonly [number, number]) => SquareReading | string | null;
  /** Gives up what is reckoned: something newer is wanted. */
  readonly giveUp: (what: GroundWork) => void;
}
