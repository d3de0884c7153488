/**
 * Finds a cycle in a directed graph.
 * @param edges pairs of from and to; a node's edge to itself is no cycle
 * @returns the nodes around one cycle, the first repeated at the end; null if there is none
 */
export function findCycle(edges: Iterable<readonly [from: string, to: string]>): string[] | null {
  const next = new Map<string, Set<string>>();
  for (const [from, to] of edges) {
    if (from === to) continue;
    const targets = next.get(from) ?? new Set();
    next.set(from, targets.add(to));
  }
  const finished = new Set<string>();
  const path: string[] = [];

  const visit = (node: string): string[] | null => {
    if (finished.has(node)) return null;
    const seenAt = path.indexOf(node);
    if (seenAt >= 0) return [...path.slice(seenAt), node];
    path.push(node);
    for (const target of next.get(node) ?? []) {
      const cycle = visit(target);
      if (cycle) return cycle;
    }
    path.pop();
    finished.add(node);
    return null;
  };

  for (const node of next.keys()) {
    const cycle = visit(node);
    if (cycle) return cycle;
  }
  return null;
}
