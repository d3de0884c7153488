/**
 * The smallest set of numbers that has one of each of some lists; of several as small the one that is first in order.
 * Null where a list is empty, since nothing is against that one.
 */
export function smallestHitting(lists: readonly (readonly number[])[]): readonly number[] | null {
  const seen = new Map(lists.map((list) => [[...list].sort((a, b) => a - b).join(' '), list]));
  const distinct = [...seen.values()].sort((a, b) => a.length - b.length);
  if (distinct.length === 0 || distinct[0].length === 0) return null;
  const most = new Set(distinct.flat()).size;
  for (let size = 1; size <= most; size += 1) {
    const found = hitting(distinct, [], size);
    if (found) return found;
  }
  return null;
}

function hitting(
  lists: readonly (readonly number[])[],
  chosen: readonly number[],
  left: number,
): readonly number[] | null {
  const open = lists.find((list) => !list.some((each) => chosen.includes(each)));
  if (!open) return [...chosen].sort((a, b) => a - b);
  if (left === 0) return null;
  for (const each of [...open].sort((a, b) => a - b)) {
    const found = hitting(lists, [...chosen, each], left - 1);
    if (found) return found;
  }
  return null;
}
