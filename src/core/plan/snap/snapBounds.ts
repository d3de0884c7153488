import { hypot } from '../../units/steadyMath';
import { ownAnchor } from '../edits/anchorOf';
import type { Performer } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import { type Bounds, boundsOf } from '../walkWays/planar';

/** What rounding may leave outside, metres. */
const NOISE_METRES = 1e-6;

/** How far from its place a standing thing may reach, whichever way it is turned, metres. */
function reachOf(record: Piece | Gear): number {
  if ('extent' in record) {
    const { lowest, highest } = record.extent;
    const [x, y, z] = lowest.map((low, axis) => highest[axis] - low);
    return (hypot(x, y, z) * record.metresPerUnit) / 2;
  }
  if ('size' in record && record.size.length === 3) return hypot(record.size[0], record.size[2]) / 2;
  if ('widthMetres' in record) return record.widthMetres / 2;
  return 'lengthMetres' in record ? record.lengthMetres / 2 : 0;
}

/**
 * Bounds on the ground, metres, of all that a record gives to catch on, perhaps wider, and known without asking what that
 * is; null where there is nothing.
 */
export function snapBounds(record: Piece | Gear | Performer): Bounds | null {
  if ('marks' in record) return boundsOf(record.marks.map(({ at }) => at));
  if (record.kind === 'skyline block') return null;
  if ('outline' in record)
    return boundsOf([...record.outline, ...(record.holes ?? []).flatMap(({ outline }) => outline)]);
  if ('path' in record) {
    const half = 'thicknessMetres' in record ? record.thicknessMetres / 2 : 0;
    return boundsOf(record.path, half + NOISE_METRES);
  }
  if ('from' in record) return boundsOf([record.from, record.to].map(([x, , z]): Spot => [x, z]));
  const at = ownAnchor(record);
  return at && boundsOf([at], reachOf(record) + NOISE_METRES);
}
