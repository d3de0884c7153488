import { itemOf } from '../items';
import type { Performer } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { anchorOf } from './anchorOf';

/** Every place that a record names itself; none of what a stand carries. */
export function spotsOf(record: Piece | Gear | Performer): readonly Spot[] {
  if ('marks' in record) return record.marks.flatMap(({ at, way }) => [...(way?.through ?? []), at]);
  if ('outline' in record)
    return [...record.outline, ...(record.holes ?? []).flatMap(({ outline }) => outline)];
  if ('path' in record) return record.path;
  if ('from' in record) return [record.from, record.to].map(([x, , z]): Spot => [x, z]);
  if ('at' in record) return [[record.at[0], record.at[2]]];
  return 'at' in record.place ? [[record.place.at[0], record.place.at[2]]] : [];
}

/** Every height that a record names itself, metres above the deck. */
export function heightsOf(record: Piece | Gear | Performer): readonly number[] {
  if ('marks' in record) return record.marks.map(({ floorMetres = 0 }) => floorMetres);
  if ('topMetres' in record) return [record.topMetres];
  if ('path' in record) return [record.baseMetres];
  if ('from' in record) return [record.from[1], record.to[1]];
  if ('at' in record) return [record.at[1]];
  return 'at' in record.place ? [record.place.at[1]] : [];
}

/**
 * The place [x, z] that items turn about and are mirrored at, metres: where a thing stands, else the middle of the
 * rectangle around all of them. Null where no item has a place.
 */
export function middleOf(plan: Plan, ids: readonly string[]): Spot | null {
  const spots = ids.flatMap((id): readonly Spot[] => {
    const record = itemOf(plan, id)?.record;
    const own = record ? spotsOf(record) : [];
    const anchor = own.length > 0 ? null : anchorOf(plan, id);
    return anchor ? [anchor] : own;
  });
  if (spots.length === 0) return null;
  if (spots.length === 1) return spots[0];
  const [xs, zs] = [spots.map(([x]) => x), spots.map(([, z]) => z)];
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...zs) + Math.max(...zs)) / 2];
}
