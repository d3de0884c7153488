/** The keys of a list that another has too, in its own order. */
export const sharedOf = (keys: readonly string[], other: readonly string[]): readonly string[] => {
  const known = new Set(other);
  return keys.filter((key) => known.has(key));
};

/**
 * The order of a merged list: as `lead` has it, with what only `other` has behind what it stands behind there, and
 * behind what `lead` alone has there.
 * @param isIn which of all keys the merged list has
 */
export function ordered(
  lead: readonly string[],
  other: readonly string[],
  isIn: (key: string) => boolean,
): string[] {
  const merged = lead.filter(isIn);
  const there = new Set(merged);
  /** What only the other has, by what it stands behind there; null for the beginning. */
  const behind = new Map<string | null, string[]>();
  let last: string | null = null;
  for (const key of other) {
    if (there.has(key)) last = key;
    else if (isIn(key)) {
      const keys = behind.get(last);
      if (keys) keys.push(key);
      else behind.set(last, [key]);
    }
  }
  if (behind.size === 0) return merged;
  const others = new Set(other);
  const all: string[] = [];
  let waiting = behind.get(null) ?? [];
  for (const key of merged) {
    if (others.has(key)) {
      all.push(...waiting);
      waiting = behind.get(key) ?? [];
    }
    all.push(key);
  }
  all.push(...waiting);
  return all;
}
