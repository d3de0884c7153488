import type { Asset } from '../../core/plan/schema/asset';
import type { Plan } from '../../core/plan/schema/plan';

/** The files that a plan names and does not hold: its models and the picture under the roof, each once. */
export function filesOf({ pieces, underlay }: Plan): readonly Asset[] {
  const assets = new Map<string, Asset>();
  for (const piece of pieces) if (piece.kind === 'model') assets.set(piece.asset.sha256, piece.asset);
  if (underlay) assets.set(underlay.asset.sha256, underlay.asset);
  return [...assets.values()];
}
