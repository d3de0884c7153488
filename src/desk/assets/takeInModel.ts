import { type Asset, LARGEST_ASSET_BYTES } from '../../core/plan/schema/asset';
import type { ReadModel } from '../../exchange/gltf-in/readModel';
import { keepFile } from './assetShelf';
import { assetStore } from './assetStore';
import { fileLabel } from './fileLabel';
import { takeUp } from './holding';
import { readModelFile } from './readModelFile';

/** A model that is read and kept on this device; in no plan yet. */
export interface TakenIn {
  readonly asset: Asset;
  readonly read: ReadModel;
}

/** Why a file was not taken in, as a sentence; null when somebody stopped it. */
export interface Refused {
  readonly sentence: string | null;
}

let running = 0;

/**
 * Reads a GLB file and keeps it on this device. The plan is not touched: what is refused, stopped or finds no room
 * leaves everything as it was.
 */
export async function takeInModel(file: File): Promise<TakenIn | Refused> {
  const name = fileLabel(file.name);
  if (file.size > LARGEST_ASSET_BYTES) {
    const most = Math.round(LARGEST_ASSET_BYTES / 1e6).toLocaleString('en-GB');
    return {
      sentence: `The file has ${Math.round(file.size / 1e6).toLocaleString('en-GB')} MB; at most ${most} MB can be kept. Save a smaller model.`,
    };
  }
  if (file.size === 0) return { sentence: 'The file is empty.' };
  assetStore.getState().importing?.stop();
  running += 1;
  const own = running;
  let isOver = false;
  const reading = readModelFile(file, (share) => {
    // A worker's last words may come after it was stopped.
    if (own === running && !isOver) assetStore.setState({ importing: { name, share, stop: reading.stop } });
  });
  assetStore.setState({ importing: { name, share: 0, stop: reading.stop } });
  const answer = await reading.answer;
  isOver = true;
  if (own === running) assetStore.setState({ importing: null });
  if (!answer) return { sentence: null };
  if (!answer.ok) return { sentence: answer.sentence };
  const refusal = await keepFile(answer.sha256, file, name);
  if (refusal !== null) return { sentence: refusal };
  takeUp(answer.sha256, answer.read);
  return { asset: { sha256: answer.sha256, name, bytes: file.size }, read: answer.read };
}
