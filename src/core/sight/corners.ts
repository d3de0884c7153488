import type { Vec3 } from '../form/build/vector';
import { filledBy } from './closed';
import { type StagePart, worldOf } from './stage';

const CORNERS = new WeakMap<StagePart, readonly Vec3[]>();

/** The eight corners of a part's box, in the world. */
export function cornersOf(part: StagePart): readonly Vec3[] {
  const known = CORNERS.get(part);
  if (known) return known;
  const { low, high } = filledBy(part.shape);
  const corners = Array.from({ length: 8 }, (_, k) =>
    worldOf(part, [k & 1 ? high[0] : low[0], k & 2 ? high[1] : low[1], k & 4 ? high[2] : low[2]]),
  );
  CORNERS.set(part, corners);
  return corners;
}
