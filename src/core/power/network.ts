import type { Plan } from '../plan/schema/plan';
import { type Child, shareOut } from './breakers';
import { type Island, islandsOf, linksAt, linksOf, otherEnd, ringOf } from './graph';
import { type Load, loadsOf, voltAmperes } from './loads';
import { distrosOf, type Source, sourcesOf } from './supplies';
import type { Feed, Feeding, Network, NetworkFault } from './types';

const byId = <Entry extends { readonly id: string }>(entries: readonly Entry[]): ReadonlyMap<string, Entry> =>
  new Map(entries.map((entry) => [entry.id, entry]));

/** An island's cables from its one source outward, and what each branch draws at full, volt-amperes. */
function treeOf(island: Island, sourceId: string, loads: ReadonlyMap<string, Load>) {
  const at = linksAt(island);
  const order: { readonly id: string; readonly cableId: string | null; readonly fromId: string | null }[] = [
    { id: sourceId, cableId: null, fromId: null },
  ];
  const seen = new Set([sourceId]);
  for (let head = 0; head < order.length; head += 1)
    for (const link of at.get(order[head].id) ?? []) {
      const id = otherEnd(link, order[head].id);
      if (seen.has(id)) continue;
      seen.add(id);
      order.push({ id, cableId: link.cableId, fromId: order[head].id });
    }
  const drawn = new Map<string, number>();
  for (const { id, fromId } of order.toReversed()) {
    const load = loads.get(id);
    const own = load ? voltAmperes(load.watts, load.powerFactor) : 0;
    const all = own + (drawn.get(id) ?? 0);
    drawn.set(id, all);
    if (fromId !== null) drawn.set(fromId, (drawn.get(fromId) ?? 0) + all);
  }
  return { order, drawn };
}

/** The cables that do not feed: with an end in the air, or in what takes no plug. */
function plugFaults(plan: Plan, takesPlug: (id: string) => boolean): readonly NetworkFault[] {
  const loose: string[] = [];
  const faults = plan.gear.flatMap((gear): NetworkFault[] => {
    if (gear.kind !== 'cable') return [];
    const ends = [gear.plugs?.from, gear.plugs?.to].filter((end) => end !== undefined);
    if (ends.length === 0) loose.push(gear.id);
    const [first] = ends;
    return [
      ...(ends.length === 1 && first !== undefined
        ? [{ kind: 'open end', cableId: gear.id, itemId: first } as const]
        : []),
      ...ends
        .filter((end) => !takesPlug(end))
        .map((itemId) => ({ kind: 'takes no plug', cableId: gear.id, itemId }) as const),
    ];
  });
  return loose.length > 0 ? [...faults, { kind: 'loose', cableIds: loose }] : faults;
}

/**
 * What is plugged into what: from each source outward along its cables. A source or a box shares its circuits out among
 * the cables that do not name one. What hangs together with a ring or with two sources in it is not worked out and said to
 * be wrong: nobody knows which way its current goes.
 */
export function networkOf(plan: Plan): Network {
  const sources = byId(sourcesOf(plan));
  const distros = byId(distrosOf(plan));
  const loads = byId(loadsOf(plan));
  const circuitOf = new Map(
    plan.gear.flatMap((gear) => (gear.kind === 'cable' ? [[gear.id, gear.circuit ?? null] as const] : [])),
  );
  const faults: NetworkFault[] = [
    ...plugFaults(plan, (id) => sources.has(id) || distros.has(id) || loads.has(id)),
  ];
  const feeds: Feed[] = [];
  const feeding = new Map<string, Feeding>();
  const tell = (ids: readonly string[], how: Feeding): readonly string[] => {
    const drawing = ids.filter((id) => loads.has(id));
    for (const id of drawing) feeding.set(id, how);
    return drawing;
  };
  const unfed: string[] = [];
  for (const island of islandsOf(linksOf(plan))) {
    const sourceIds = island.ids.filter((id) => sources.has(id));
    const ring = ringOf(island);
    if (ring) {
      faults.push({ kind: 'ring', cableIds: ring, itemIds: tell(island.ids, 'ring') });
      continue;
    }
    if (sourceIds.length > 1) {
      faults.push({ kind: 'two sources', sourceIds, itemIds: tell(island.ids, 'two sources') });
      continue;
    }
    const source = sources.get(sourceIds[0] ?? '');
    if (!source) {
      unfed.push(...tell(island.ids, 'no source'));
      continue;
    }
    tell(island.ids, 'fed');
    feedIsland(island, source);
  }
  if (unfed.length > 0) faults.push({ kind: 'no source', itemIds: unfed });
  const bare = [...loads.values()].filter(({ id }) => !feeding.has(id));
  for (const { id, supply } of bare) feeding.set(id, supply === 'own' ? 'own' : 'no cord');
  const cordless = bare.filter(({ supply }) => supply === 'cord').map(({ id }) => id);
  if (cordless.length > 0) faults.push({ kind: 'no cord', itemIds: cordless });
  return { sources, distros, loads, feeds, feeding, faults };

  function feedIsland(island: Island, source: Source): void {
    const { order, drawn } = treeOf(island, source.id, loads);
    const legsAt = new Map<string, readonly number[]>([
      [source.id, Array.from({ length: source.legCount }, (_, leg) => leg + 1)],
    ]);
    for (const { id } of order) {
      const children = order.flatMap((entry): Child[] =>
        entry.fromId === id && entry.cableId !== null
          ? [
              {
                cableId: entry.cableId,
                toId: entry.id,
                voltAmperes: drawn.get(entry.id) ?? 0,
                wanted: circuitOf.get(entry.cableId) ?? null,
                isDistro: distros.has(entry.id),
              },
            ]
          : [],
      );
      const legs = legsAt.get(id) ?? [1];
      if (children.length === 0) continue;
      const owner = id === source.id ? source : distros.get(id);
      if (!owner)
        faults.push({ kind: 'passes on', itemId: id, cableIds: children.map(({ cableId }) => cableId) });
      const shared = owner ? shareOut(owner, children, source.volts) : null;
      if (shared) faults.push(...shared.faults);
      for (const child of children) {
        const circuit = shared?.circuits.get(child.cableId) ?? null;
        const own = circuit === null ? null : owner?.circuits[circuit].legs;
        const carried = own ? [...new Set(own.map((leg) => legs[(leg - 1) % legs.length]))] : legs;
        legsAt.set(child.toId, carried);
        feeds.push({
          cableId: child.cableId,
          fromId: id,
          toId: child.toId,
          sourceId: source.id,
          circuit,
          legs: carried,
        });
      }
    }
  }
}
