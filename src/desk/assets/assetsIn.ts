import type { Asset } from '../../core/plan/schema/asset';
import type { Plan } from '../../core/plan/schema/plan';

/** The files of a plan's models, each once. */
export function modelFilesIn({ pieces }: Plan): readonly Asset[] {
  const assets = new Map<string, Asset>();
  for (const piece of pieces) if (piece.kind === 'model') assets.set(piece.asset.sha256, piece.asset);
  return [...assets.values()];
}
