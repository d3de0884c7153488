import { itemOf } from '../items';
import type { Performer } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';

/** The place of a record by itself: its foot, else its first corner or end; null when a stand carries it or it has none. */
export function ownAnchor(record: Piece | Gear | Performer): Spot | null {
  if ('at' in record) return [record.at[0], record.at[2]];
  if ('place' in record) return 'at' in record.place ? [record.place.at[0], record.place.at[2]] : null;
  if ('from' in record) return [record.from[0], record.from[2]];
  if ('outline' in record) return record.outline[0] ?? null;
  if ('path' in record) return record.path[0] ?? null;
  return record.marks[0]?.at ?? null;
}

/** The stand that carries what the record describes, or null. */
export const standUnder = (record: Piece | Gear): string | null =>
  'place' in record && 'on' in record.place ? record.place.on : null;

/** The stand that carries an item, or null. */
export function carrierOf(plan: Plan, id: string): string | null {
  const record = plan.gear.find((gear) => gear.id === id);
  return record ? standUnder(record) : null;
}

/**
 * The point [x, z] in metres that `moveItem` moves: where a thing stands, the first corner of a run, one end of
 * a line, the first mark of a performer, the stand of what a stand carries. Null for an unknown id or no place.
 */
export function anchorOf(plan: Plan, id: string): Spot | null {
  const item = itemOf(plan, carrierOf(plan, id) ?? id);
  return item ? ownAnchor(item.record) : null;
}
