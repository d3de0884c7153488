/** What one thing may come to, the least change first; null beyond the last. */
export interface Options<Pick extends { readonly change: number }> {
  readonly at: (k: number) => Generator<unknown, Pick | null, void>;
}

/** Whether a pick of one thing and a pick of another go together; of lists, by their places. */
export type Fits<Pick> = (a: number, pick: Pick, b: number, other: Pick) => boolean;

/** The picks of all, or the things for which none were found that go together: certain where all were weighed. */
export type Chosen<Pick> =
  | { readonly picks: readonly Pick[] }
  | { readonly stuck: readonly number[]; readonly isCertain: boolean };

/** So many picks are weighed for things that are in each other's way. */
const MOST_NODES = 20_000;

interface Node<Pick> {
  readonly cost: number;
  readonly picks: readonly Pick[];
  /** The pick that comes next is this one of its list. */
  readonly place: number;
}

/** Nodes, the least cost first; of the same cost the one that came first. */
class Waiting<Pick> {
  private readonly nodes: { readonly node: Node<Pick>; readonly order: number }[] = [];
  private count = 0;

  push(node: Node<Pick>): void {
    const entry = { node, order: this.count };
    this.count += 1;
    let at = this.nodes.length;
    this.nodes.push(entry);
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (!this.isBefore(entry, this.nodes[up])) break;
      this.nodes[at] = this.nodes[up];
      at = up;
    }
    this.nodes[at] = entry;
  }

  pop(): Node<Pick> | null {
    const top = this.nodes[0];
    const last = this.nodes.pop();
    if (!top || !last) return null;
    if (this.nodes.length === 0) return top.node;
    let at = 0;
    for (;;) {
      let down = 2 * at + 1;
      if (down >= this.nodes.length) break;
      if (down + 1 < this.nodes.length && this.isBefore(this.nodes[down + 1], this.nodes[down])) down += 1;
      if (!this.isBefore(this.nodes[down], last)) break;
      this.nodes[at] = this.nodes[down];
      at = down;
    }
    this.nodes[at] = last;
    return top.node;
  }

  private isBefore(
    a: { readonly node: Node<Pick>; readonly order: number },
    b: { readonly node: Node<Pick>; readonly order: number },
  ): boolean {
    return a.node.cost < b.node.cost || (a.node.cost === b.node.cost && a.order < b.order);
  }
}

/** The least picks of some things that all go together, best first; else why there are none. */
function* chooseTogether<Pick extends { readonly change: number }>(
  options: readonly Options<Pick>[],
  group: readonly number[],
  fits: Fits<Pick>,
): Generator<unknown, readonly Pick[] | 'none' | 'too many', void> {
  const least: number[] = [];
  for (const each of group) {
    const first = yield* options[each].at(0);
    if (!first) return 'none';
    least.push(first.change);
  }
  const restFrom = (depth: number): number => least.slice(depth).reduce((sum, change) => sum + change, 0);
  const waiting = new Waiting<Pick>();
  waiting.push({ cost: restFrom(0), picks: [], place: 0 });
  for (let count = 0; count < MOST_NODES; count += 1) {
    const node = waiting.pop();
    if (!node) return 'none';
    const { picks, place } = node;
    if (picks.length === group.length) return picks;
    const depth = picks.length;
    const pick = yield* options[group[depth]].at(place);
    if (!pick) continue;
    const spent = picks.reduce((sum, { change }) => sum + change, 0);
    const next = yield* options[group[depth]].at(place + 1);
    if (next) waiting.push({ cost: spent + next.change + restFrom(depth + 1), picks, place: place + 1 });
    if (picks.every((other, k) => fits(group[k], other, group[depth], pick)))
      waiting.push({ cost: spent + pick.change + restFrom(depth + 1), picks: [...picks, pick], place: 0 });
    if (count % 64 === 63) yield;
  }
  return 'too many';
}

/**
 * Picks one of each thing's options so that all go together, with the least change of all. Things are chosen apart, and
 * together only where their picks are in each other's way: what is the least of each part with fewer rules is the least
 * of the whole once it keeps to all of them.
 */
export function* choose<Pick extends { readonly change: number }>(
  options: readonly Options<Pick>[],
  fits: Fits<Pick>,
): Generator<unknown, Chosen<Pick>, void> {
  const picks: Pick[] = [];
  for (const [k, each] of options.entries()) {
    const first = yield* each.at(0);
    if (!first) return { stuck: [k], isCertain: true };
    picks.push(first);
  }
  const groups = options.map((_, k) => [k]);
  for (;;) {
    const met = firstMisfit(picks, fits);
    if (!met) return { picks };
    const [a, b] = met.map((k) => groups.findIndex((group) => group.includes(k)));
    const group = [...new Set([...groups[a], ...groups[b]])].sort((one, other) => one - other);
    for (const k of [a, b].sort((one, other) => other - one)) if (groups[k]) groups.splice(k, 1);
    groups.push(group);
    const chosen = yield* chooseTogether(options, group, fits);
    if (typeof chosen === 'string') return { stuck: group, isCertain: chosen === 'none' };
    for (const [k, pick] of chosen.entries()) picks[group[k]] = pick;
  }
}

function firstMisfit<Pick>(picks: readonly Pick[], fits: Fits<Pick>): readonly [number, number] | null {
  for (let b = 1; b < picks.length; b += 1)
    for (let a = 0; a < b; a += 1) if (!fits(a, picks[a], b, picks[b])) return [a, b];
  return null;
}
