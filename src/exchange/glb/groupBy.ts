import type { PlacedPart } from '../../core/form/types';

/** Groups what has triangles by a key, in the order of first appearance. */
export function groupBy(
  parts: readonly PlacedPart[],
  key: (part: PlacedPart) => string,
): Map<string, PlacedPart[]> {
  const groups = new Map<string, PlacedPart[]>();
  for (const part of parts) {
    if (part.shape.indices.length === 0) continue;
    const group = groups.get(key(part));
    if (group) group.push(part);
    else groups.set(key(part), [part]);
  }
  return groups;
}
