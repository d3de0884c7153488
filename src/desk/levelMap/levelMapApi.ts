import type { HeldModel } from '../../core/form/models/heldModel';
import type { GridQuestion, LevelGrid } from '../../core/light/levelGrid';
import type { PlaceReading } from '../../core/light/placeReading';
import type { FrameLevels, SpotReading } from '../../core/light/spotReading';
import type { PackedPlan } from '../planWire';
import type { Hearing } from '../workers/hearing';

/** What the worker of the level maps answers. `hold` comes first; the questions are about the plan held. */
export interface LevelMapApi extends Hearing {
  /** Puts an imported model at hand, by the SHA-256 of its file. */
  readonly holdModel: (sha256: string, model: HeldModel) => void;
  readonly hold: (packed: PackedPlan) => void;
  /** Levels over the roof, through a setup or, for null, as the plan has it; null when it was given up. */
  readonly map: (
    setupId: string | null,
    seconds: number,
    question: GridQuestion,
  ) => Promise<LevelGrid | null>;
  /** Stops over a setup's frame, so many cells wide; null when it was given up. */
  readonly frame: (setupId: string, seconds: number, columns: number) => Promise<FrameLevels | null>;
  /** What a spot meter reads in a setup's frame, 0..1 from its left and top edges. */
  readonly spot: (setupId: string, seconds: number, at: readonly [number, number]) => SpotReading | null;
  /** What a meter reads over a spot of the roof. */
  readonly place: (
    setupId: string | null,
    seconds: number,
    spot: readonly [number, number],
    question: Pick<GridQuestion, 'heightMetres' | 'of'>,
  ) => PlaceReading | null;
  /** Gives up a map of the roof or of the frame: something newer is wanted. */
  readonly giveUp: (what: 'map' | 'frame') => void;
}
