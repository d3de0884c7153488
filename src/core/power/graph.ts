import type { Plan } from '../plan/schema/plan';

/** A cable with both ends plugged in. */
interface Link {
  readonly cableId: string;
  readonly ends: readonly [string, string];
}

/** Things that hang together by cables. */
export interface Island {
  readonly ids: readonly string[];
  readonly links: readonly Link[];
}

/** The cables of a plan that are plugged in at both ends. */
export const linksOf = (plan: Plan): readonly Link[] =>
  plan.gear.flatMap((gear): Link[] => {
    if (gear.kind !== 'cable') return [];
    const { from, to } = gear.plugs ?? {};
    return from === undefined || to === undefined ? [] : [{ cableId: gear.id, ends: [from, to] }];
  });

/** What hangs together by links, each island in the order in which its things are first named. */
export function islandsOf(links: readonly Link[]): readonly Island[] {
  const above = new Map<string, string>();
  const rootOf = (id: string): string => {
    let root = id;
    for (let up = above.get(root); up !== undefined && up !== root; up = above.get(root)) root = up;
    return root;
  };
  for (const { ends } of links) {
    for (const end of ends) if (!above.has(end)) above.set(end, end);
    above.set(rootOf(ends[1]), rootOf(ends[0]));
  }
  const islands = new Map<string, { ids: string[]; links: Link[] }>();
  for (const id of above.keys()) {
    const root = rootOf(id);
    const island = islands.get(root) ?? { ids: [], links: [] };
    island.ids.push(id);
    islands.set(root, island);
  }
  for (const link of links) islands.get(rootOf(link.ends[0]))?.links.push(link);
  return [...islands.values()];
}

/** The links at each thing of an island. */
export function linksAt({ ids, links }: Island): ReadonlyMap<string, readonly Link[]> {
  const at = new Map<string, Link[]>(ids.map((id) => [id, []]));
  for (const link of links) for (const end of new Set(link.ends)) at.get(end)?.push(link);
  return at;
}

/** The other end of a link. */
export const otherEnd = ({ ends }: Link, id: string): string => (ends[0] === id ? ends[1] : ends[0]);

/** The cables of one ring of an island, in the order in which one goes round it; null where there is none. */
export function ringOf(island: Island): readonly string[] | null {
  if (island.links.length < island.ids.length) return null;
  const at = linksAt(island);
  const cameBy = new Map<string, { readonly link: Link | null; readonly depth: number }>();
  const queue: string[] = [island.ids[0]];
  cameBy.set(island.ids[0], { link: null, depth: 0 });
  for (let head = 0; head < queue.length; head += 1) {
    const id = queue[head];
    const own = cameBy.get(id);
    for (const link of at.get(id) ?? []) {
      if (link === own?.link) continue;
      const other = otherEnd(link, id);
      if (cameBy.has(other)) return roundBy(cameBy, link);
      cameBy.set(other, { link, depth: (own?.depth ?? 0) + 1 });
      queue.push(other);
    }
  }
  return null;
}

/** The ring that a link closes in a tree. */
function roundBy(
  cameBy: ReadonlyMap<string, { readonly link: Link | null; readonly depth: number }>,
  closing: Link,
): readonly string[] {
  let [one, other] = closing.ends;
  const [ones, others]: [string[], string[]] = [[], []];
  while (one !== other) {
    const [a, b] = [cameBy.get(one), cameBy.get(other)];
    const isOne = (a?.depth ?? 0) >= (b?.depth ?? 0);
    const link = isOne ? a?.link : b?.link;
    if (!link) break;
    (isOne ? ones : others).push(link.cableId);
    if (isOne) one = otherEnd(link, one);
    else other = otherEnd(link, other);
  }
  return [...ones, ...others.reverse(), closing.cableId];
}
