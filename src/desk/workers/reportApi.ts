import type { SetupContinuity } from '../../core/continuity/continuity';
import type { Coverage } from '../../core/continuity/coverage';
import type { DirtyAsked, MadeDirty } from '../../core/continuity/makeDirty';
import type { HeldModel } from '../../core/form/models/heldModel';
import type { DimAdvice, GelAdvice, Refused, ScrimAdvice, StopAdvice } from '../../core/light/advice';
import type { HighlightAdvice } from '../../core/light/aimForHighlight';
import type { CatchLights } from '../../core/light/catchLight';
import type { EdgeLight } from '../../core/light/edgeLight';
import type { DistanceAdvice } from '../../core/light/keyDistance';
import type { SourceLevel } from '../../core/light/levels';
import type { Setup } from '../../core/plan/schema/setup';
import type { LensTrial } from '../../core/report/lensTest';
import type { LightNow } from '../../core/report/light/lightNow';
import type { SetupLight } from '../../core/report/light/types';
import type { Notice, SetupReport } from '../../core/report/types';
import type { LengthSystem } from '../../core/units/lengths';
import type { ToldFault } from '../blocking/toldFaults';
import type { PackedPlan } from '../planWire';
import type { Hearing } from './hearing';

export interface ContinuityAnswer {
  readonly setups: readonly SetupContinuity[];
  readonly coverage: Coverage;
}

/** The light on all faces at an instant, what is mirrored in their eyes, and which of their edges are lit from behind. */
export interface InstantLight extends LightNow {
  readonly eyes: readonly CatchLights[];
  readonly edges: readonly EdgeLight[];
}

/** The key on a face, and all ways to have it so many stops under the exposure. */
export interface KeyWays {
  readonly key: SourceLevel & { readonly lampId: string; readonly lampLabel: string };
  /** The stop that has it on the exposure, and the one that has it so many stops under. */
  readonly onExposure: StopAdvice | Refused;
  readonly stop: StopAdvice | Refused;
  readonly dim: DimAdvice | Refused;
  readonly distance: DistanceAdvice | Refused;
  readonly scrim: ScrimAdvice | Refused;
  readonly gel: GelAdvice | Refused;
}

/** What the report worker answers. `hold` comes first; the questions are about the plan held. */
export interface ReportApi extends Hearing {
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
  /**
   * The light of one setup over its whole span; null for an id that the plan lacks, and when it was given up. `seen`: what
   * the setup sees over its span, where that is known already. Its sentences are in the lengths that are read.
   */
  readonly light: (
    setupId: string,
    seen: SetupReport | null,
    lengths: LengthSystem,
  ) => Promise<SetupLight | null>;
  /** What falls on each face at an instant, seconds, through a setup or on the roof. Gives nothing up. */
  readonly lightNow: (setupId: string | null, seconds: number) => InstantLight | null;
  /** How to have a performer's key so many stops under a setup's exposure at an instant, seconds. */
  readonly keyWays: (
    setupId: string,
    performerId: string,
    seconds: number,
    stopsUnder: number,
  ) => KeyWays | Refused;
  /** Where a lamp has to be for its highlight to lie before a performer's feet at an instant, seconds. */
  readonly highlightAtFeet: (
    setupId: string,
    lampId: string,
    performerId: string,
    seconds: number,
  ) => HighlightAdvice | Refused;
  /**
   * The camera of a setup from which somebody near takes a share of the frame; `tell` hears the done share, 0..1. Null
   * for an id that the plan lacks, where nobody is near, and when it was given up.
   */
  readonly makeDirty: (
    setupId: string,
    asked: DirtyAsked,
    tell: (share: number) => void,
  ) => Promise<MadeDirty | null>;
  /** What cannot be played as it is written. */
  readonly blockingFaults: () => readonly ToldFault[];
  /** The same of a setup with what is lost in the dark, once its whole span is read; null when it was given up. */
  readonly darken: (seen: SetupReport) => Promise<SetupReport | null>;
  /** What should be known about the plan before trusting its findings. */
  readonly notices: () => readonly Notice[];
  /** Gives up what is being read: something newer is wanted. */
  readonly giveUp: () => void;
}
