import type { Breaker } from './supplies';
import type { NetworkFault } from './types';

/** A cable that wants a socket. */
export interface Child {
  readonly cableId: string;
  readonly toId: string;
  /** All that hangs on it, at full. */
  readonly voltAmperes: number;
  /** The circuit that the plan names, from 1; null where it names none. */
  readonly wanted: number | null;
  readonly isDistro: boolean;
}

interface Owner {
  readonly id: string;
  readonly circuits: readonly Breaker[];
}

/**
 * Shares the circuits of a source or a box out among the cables at it: first those that name one, then the boxes, each to
 * the strongest with a free socket, then the rest, the strongest first, each to where the breaker stays least loaded.
 * Cables that find no socket hang on the least loaded all the same, and are told.
 */
export function shareOut(
  { id, circuits }: Owner,
  children: readonly Child[],
  volts: number,
): { readonly circuits: ReadonlyMap<string, number>; readonly faults: readonly NetworkFault[] } {
  const free = circuits.map(({ sockets }) => sockets);
  const drawn = circuits.map(() => 0);
  const given = new Map<string, number>();
  const faults: NetworkFault[] = [];
  const give = (child: Child, circuit: number): void => {
    given.set(child.cableId, circuit);
    free[circuit] -= 1;
    drawn[circuit] += child.voltAmperes;
  };
  const loaded = (circuit: number, more: number): number =>
    (drawn[circuit] + more) / (circuits[circuit].amps * volts * circuits[circuit].legs.length);
  const least = (among: readonly number[], child: Child): number =>
    among.reduce((best, circuit) =>
      loaded(circuit, child.voltAmperes) < loaded(best, child.voltAmperes) ? circuit : best,
    );
  const strength = (circuit: number): number => circuits[circuit].amps * circuits[circuit].legs.length;
  const all = circuits.map((_, circuit) => circuit);
  const rest = children.filter((child) => {
    if (child.wanted === null) return true;
    if (child.wanted > circuits.length) {
      faults.push({ kind: 'no such circuit', cableId: child.cableId, itemId: id, circuit: child.wanted });
      return true;
    }
    give(child, child.wanted - 1);
    return false;
  });
  const inOrder = rest.toSorted(
    (a, b) => Number(b.isDistro) - Number(a.isDistro) || b.voltAmperes - a.voltAmperes,
  );
  for (const child of inOrder) {
    const open = all.filter((circuit) => free[circuit] > 0);
    const among = open.length > 0 ? open : all;
    const strongest = among.reduce((best, circuit) => (strength(circuit) > strength(best) ? circuit : best));
    give(child, child.isDistro ? strongest : least(among, child));
  }
  if (free.some((count) => count < 0))
    faults.push({
      kind: 'too few sockets',
      itemId: id,
      cables: children.length,
      sockets: circuits.reduce((sum, { sockets }) => sum + sockets, 0),
    });
  return { circuits: given, faults };
}
