import type { HeldModel } from '../core/form/models/heldModel';
import { holdModel } from '../core/form/models/modelShelf';
import type { Plan } from '../core/plan/schema/plan';
import { ModelFault } from '../exchange/gltf-in/modelFault';
import type { ReadModel } from '../exchange/gltf-in/readModel';
import { fileBeside } from './fileBeside';
import { plainText } from './plainText';
import { printLine, type Terminal } from './terminal';

/** The models of a plan by the SHA-256 of their files: for the workers, which have a memory of their own. */
export type HeldModels = ReadonlyMap<string, HeldModel>;

/**
 * Puts the files of a plan's models at hand, each looked for by its name in the folder of the plan and taken only with
 * the very contents that the plan names. What is not there is a notice of the report; what is there and is another
 * file, or cannot be read, is said on the error stream.
 */
export async function holdModels(plan: Plan, planFile: string, terminal: Terminal): Promise<HeldModels> {
  const say = (sentence: string): void => printLine(terminal.err, `standclear: ${plainText(sentence)}`);
  const held = new Map<string, HeldModel>();
  for (const piece of plan.pieces) {
    if (piece.kind !== 'model' || held.has(piece.asset.sha256)) continue;
    const bytes = fileBeside(piece.asset, planFile, say);
    if (!bytes) continue;
    try {
      const { model } = await read(bytes);
      holdModel(piece.asset.sha256, model);
      held.set(piece.asset.sha256, model);
    } catch (error) {
      if (!(error instanceof ModelFault)) throw error;
      say(`${JSON.stringify(piece.asset.name)} was not read. ${error.message}`);
    }
  }
  return held;
}

/** Loads the reader with the first model: most plans have none, and start without waiting for it. */
async function read(bytes: Uint8Array<ArrayBuffer>): Promise<ReadModel> {
  const { readModel } = await import('../exchange/gltf-in/readModel');
  const { createDecoderModule } = (await import('draco3dgltf')).default;
  return readModel(bytes, () => createDecoderModule({}));
}
