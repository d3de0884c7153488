import type { HeldModel } from '../../core/form/models/heldModel';
import type { DarkFrom } from '../../core/night/dusk/darkFrom';
import type { DuskLight } from '../../core/night/dusk/lightThroughDusk';
import type { PackingLine } from '../../core/night/packing/types';
import type { Night } from '../../core/night/types';
import type { PackedPlan } from '../planWire';
import type { Hearing } from '../workers/hearing';

/** All of a night that is worked out at once. */
export interface NightAnswer {
  readonly night: Night;
  readonly packing: readonly PackingLine[];
  /** The light of the sky, minute by minute. */
  readonly dusk: readonly DuskLight[];
}

/** How far a search for an order is: its best so far, by the places of the plan's setups, and the done share. */
export interface SuggestProgress {
  readonly order: readonly number[];
  readonly done: number;
}

/** An order that a search ended with. */
export interface SuggestAnswer {
  readonly order: readonly number[];
  /** Whether no order is better. */
  readonly isExact: boolean;
  /** What no order keeps together, in a sentence; empty where there is nothing of the kind. */
  readonly conflict: string;
}

/** What the night's worker answers. `hold` comes first; the questions are about the plan held. */
export interface NightApi extends Hearing {
  /** Puts an imported model at hand, by the SHA-256 of its file. */
  readonly holdModel: (sha256: string, model: HeldModel) => void;
  readonly hold: (packed: PackedPlan) => void;
  readonly night: () => NightAnswer;
  /** Null when it was given up. */
  readonly suggest: (tell: (progress: SuggestProgress) => void) => Promise<SuggestAnswer | null>;
  /** From when things are lost in the dark; `tell` hears the done share. Whoever gives it up ends the worker. */
  readonly darkFrom: (tell: (share: number) => void) => Promise<readonly DarkFrom[] | null>;
  readonly giveUpSuggesting: () => void;
}
