import type { Caution } from '../../core/cautions/types';
import type { HeldModel } from '../../core/form/models/heldModel';
import type { PackedPlan } from '../planWire';
import type { Hearing } from '../workers/hearing';

/** What the worker of cautions answers. `hold` comes first; the question is about the plan held. */
export interface CautionsApi extends Hearing {
  /** Puts an imported model at hand, by the SHA-256 of its file. */
  readonly holdModel: (sha256: string, model: HeldModel) => void;
  readonly hold: (packed: PackedPlan) => void;
  readonly cautions: () => readonly Caution[];
}
