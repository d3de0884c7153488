import type { HeldModel } from '../../core/form/models/heldModel';
import type { PackAsked } from '../../exchange/pdf/packInput';
import type { Pack } from '../../exchange/pdf/types';
import type { PackedPlan } from '../planWire';
import type { Hearing } from '../workers/hearing';

/** What the worker of the pack does. It works in one go and is ended to be stopped. */
export interface PackApi extends Hearing {
  readonly holdModel: (sha256: string, model: HeldModel) => void;
  readonly hold: (packed: PackedPlan) => void;
  /** Works out all that is in the pack of the plan that it holds; hears the done share, 0..1. */
  readonly read: (asked: PackAsked, tell: (share: number) => void) => Promise<void>;
  /** Writes what was read, with the pictures that there are by the ids of setups. */
  readonly write: (stills: ReadonlyMap<string, Uint8Array>) => Promise<Pack>;
  /** Writes the crew sheet as one file of HTML, with the pictures that there are, JPEG data by the ids of setups. */
  readonly writeCrewFile: (pictures: ReadonlyMap<string, string>) => string;
}
