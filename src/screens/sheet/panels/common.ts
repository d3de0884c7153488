import type { Item } from '../../../core/plan/items';

/** What several items have of a field: all of them one value, or different ones; null where one of them has none. */
export type Common<Value> = { readonly value: Value } | 'mixed' | null;

/** Reads a field of all items; `of` says null for an item that has none. */
export function commonOf<Value extends string | number>(
  items: readonly Item[],
  of: (item: Item) => Value | null,
): Common<Value> {
  const values = items.map(of);
  const [first] = values;
  if (first === undefined || values.includes(null) || first === null) return null;
  return values.every((value) => value === first) ? { value: first } : 'mixed';
}

/** The value that all have, or null where they differ. */
export const sharedOf = <Value>(common: Common<Value>): Value | null =>
  common !== null && common !== 'mixed' ? common.value : null;

/** A number of the record by its name in the plan; null where it has none. */
export function numberOf(item: Item, field: string): number | null {
  const value: unknown = Reflect.get(item.record, field);
  return typeof value === 'number' ? value : null;
}
