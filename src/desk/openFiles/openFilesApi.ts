import type { HeldModel } from '../../core/form/models/heldModel';
import type { PackedPlan } from '../planWire';
import type { Hearing } from '../workers/hearing';

/** What the worker writes for other programs. */
export type WorkedFile = 'glb' | 'usdz' | 'fdl' | 'ics' | 'csv';

/** What the worker of open files does. It writes in one go and is ended after each file. */
export interface OpenFilesApi extends Hearing {
  readonly holdModel: (sha256: string, model: HeldModel) => void;
  readonly hold: (packed: PackedPlan) => void;
  /** The file of the plan that it holds, at an instant of the action's clock where the file is of one. */
  readonly write: (what: WorkedFile, seconds: number) => Promise<Uint8Array<ArrayBuffer>>;
}
