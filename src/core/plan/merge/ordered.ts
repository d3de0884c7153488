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
  const others = new Set(other);
  let after = -1;
  for (const key of other) {
    if (!isIn(key)) continue;
    if (there.has(key)) after = merged.indexOf(key);
    else {
      after += 1;
      while (after < merged.length && !others.has(merged[after])) after += 1;
      merged.splice(after, 0, key);
      there.add(key);
    }
  }
  return merged;
}
