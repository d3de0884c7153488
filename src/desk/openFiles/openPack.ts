import type { Plan } from '../../core/plan/schema/plan';
import { failure, type Result, success } from '../../core/units/result';
import { PACK_LIMITS } from '../../exchange/planPack/limits';
import { readPlanPack } from '../../exchange/planPack/read';
import { keepFile } from '../assets/assetShelf';
import { assetStore } from '../assets/assetStore';
import { fileLabel } from '../assets/fileLabel';

/**
 * Reads a file pack: its models and its picture are kept on this device, and the plan comes back. A pack with anything
 * wrong leaves nothing behind; where this device has no room for all of its files, those before stay,
 * named by their contents, so that another try finds them. The fault is one sentence.
 */
export async function openPack(file: File): Promise<Result<Plan, string>> {
  if (file.size > PACK_LIMITS.packBytes)
    return failure([`The pack has ${file.size} bytes, expected at most ${PACK_LIMITS.packBytes}.`]);
  const read = await readPlanPack(new Uint8Array(await file.arrayBuffer()));
  if (!read.ok) return failure([read.sentence]);
  const { plan, files } = read.pack;
  for (const { asset, bytes } of files) {
    const refusal = await keepFile(asset.sha256, new Blob([bytes]), fileLabel(asset.name));
    if (refusal !== null) return failure([refusal]);
  }
  forget(files.map(({ asset }) => asset.sha256));
  return success(plan);
}

/** What was missing until now is looked for anew when the plan opens. */
function forget(digests: readonly string[]): void {
  const states = new Map(assetStore.getState().states);
  for (const sha256 of digests) {
    const status = states.get(sha256)?.status;
    if (status === 'missing' || status === 'unreadable') states.delete(sha256);
  }
  assetStore.setState({ states });
}
