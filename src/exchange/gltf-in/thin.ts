import { MeshoptSimplifier } from 'meshoptimizer';
import type { Gathered } from './gathered';

/** So many triangles a lens can judge while something is dragged. */
export const MOST_JUDGED = 300_000;
/** Thinning out stops where the surface would move farther than this share of the model's size. */
const LARGEST_ERROR = 1 / 3000;

/** Surfaces, thinned out or as they came, and how far they may have moved, in the file's units. */
interface Thinned {
  readonly surfaces: readonly Gathered[];
  readonly errorUnits: number;
}

/** Thins a model out to what can be judged at speed; one that is small enough comes back as it is. */
export async function thinned(surfaces: readonly Gathered[], triangles: number): Promise<Thinned> {
  if (triangles <= MOST_JUDGED) return { surfaces, errorUnits: 0 };
  await MeshoptSimplifier.ready;
  const share = MOST_JUDGED / triangles;
  let errorUnits = 0;
  const thin = surfaces.map((surface) => {
    const target = Math.floor((surface.indices.length / 3) * share) * 3;
    const [indices, error] = MeshoptSimplifier.simplify(
      surface.indices,
      surface.positions,
      3,
      target,
      LARGEST_ERROR,
      ['LockBorder'],
    );
    errorUnits = Math.max(errorUnits, error * MeshoptSimplifier.getScale(surface.positions, 3));
    return { ...surface, indices };
  });
  return { surfaces: thin, errorUnits };
}
