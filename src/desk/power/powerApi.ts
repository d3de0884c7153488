import type { HeldModel } from '../../core/form/models/heldModel';
import type { NewCable } from '../../core/plan/edits/layCables';
import type { MendedSentence } from '../../core/report/power/mending';
import type { PowerReport } from '../../core/report/power/types';
import type { PackedPlan } from '../planWire';
import type { Hearing } from '../workers/hearing';

/** A plan's power, its sentences with what mends them. */
export interface PowerAnswer {
  readonly report: Omit<PowerReport, 'sentences'>;
  readonly sentences: readonly MendedSentence[];
}

/** A cable that connecting everything lays. */
export interface LaidCable extends NewCable {
  readonly label: string;
  /** With slack. */
  readonly lengthMetres: number;
}

/** What connecting everything would do. */
export interface ConnectAnswer {
  readonly cables: readonly LaidCable[];
  /** How many it lays and how much of it, what is left without, and why. */
  readonly sentences: readonly string[];
}

/** What the power's worker answers. `hold` comes first; the questions are about the plan held. */
export interface PowerApi extends Hearing {
  /** Puts an imported model at hand, by the SHA-256 of its file. */
  readonly holdModel: (sha256: string, model: HeldModel) => void;
  readonly hold: (packed: PackedPlan) => void;
  readonly power: () => PowerAnswer;
  readonly connect: () => ConnectAnswer;
}
