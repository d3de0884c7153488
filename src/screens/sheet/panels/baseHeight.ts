import type { Item } from '../../../core/plan/items';

/** Height of the foot above the deck, or of the middle of what hangs; null where a stand or a path decides it. */
export function baseHeightOf({ record }: Item): number | null {
  if ('at' in record) return record.at[1];
  return 'place' in record && 'at' in record.place ? record.place.at[1] : null;
}
