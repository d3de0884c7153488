/** A list with an entry in the place of the one with its id, or at its end; the same list when nothing changes or it is full. */
export function putEntry<Entry extends { readonly id: string }>(
  list: Entry[],
  entry: Entry,
  most: number,
): Entry[] {
  const at = list.findIndex(({ id }) => id === entry.id);
  if (at === -1) return list.length >= most ? list : [...list, entry];
  return sameEntry(list[at], entry) ? list : list.with(at, entry);
}

/** Whether two records say the same, in whatever order. */
export const sameEntry = (a: object, b: object): boolean => sorted(a) === sorted(b);

const sorted = (record: object): string =>
  JSON.stringify(record, (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
