import type { Flow } from './flow';
import { voltAmperes } from './loads';
import { type CircuitFlow, CONTINUOUS_SHARE } from './ratings';
import type { Network } from './types';

/** A load that another source could take over. */
export interface Move {
  readonly loadId: string;
  /** What its cord would be plugged into. */
  readonly ownerId: string;
  /** The circuit there, from 1. */
  readonly circuit: number;
}

/** What happens when a source stops. */
export interface Stop {
  readonly sourceId: string;
  readonly goesDark: readonly string[];
  readonly moves: readonly Move[];
  /** What no other source has room for. */
  readonly staysDark: readonly string[];
}

const keyOf = (ownerId: string, number: number): string => `${ownerId} ${number}`;

/**
 * What goes dark when a source stops, and where each of its loads would find a free socket, a breaker under four fifths
 * and watts that the source still has, the largest first; the box that it hung on would go dark with it.
 */
export function stopsOf(network: Network, flow: Flow, circuits: readonly CircuitFlow[]): readonly Stop[] {
  const sourceAt = new Map([
    ...[...network.sources.keys()].map((id) => [id, id] as const),
    ...network.feeds.map(({ toId, sourceId }) => [toId, sourceId] as const),
  ]);
  const feedInto = new Map(network.feeds.map((feed) => [feed.toId, feed]));
  return [...network.sources.values()].flatMap((source): Stop[] => {
    const lost = [...flow.loads.values()].filter(({ sourceId }) => sourceId === source.id);
    if (lost.length === 0) return [];
    const spare = new Map(
      [...network.sources.values()].map(({ id, continuousWatts }) => [
        id,
        (continuousWatts ?? Number.POSITIVE_INFINITY) - (flow.sources.get(id)?.voltAmperes ?? 0),
      ]),
    );
    const room = new Map(
      circuits.map((circuit) => [
        keyOf(circuit.ownerId, circuit.number),
        {
          circuit,
          sockets: circuit.sockets - circuit.cableIds.length,
          amps: circuit.ratedAmps * CONTINUOUS_SHARE - Math.max(...circuit.legAmps),
        },
      ]),
    );
    /** The breakers from one up to its source, itself first. */
    const chainOf = (ownerId: string, number: number): readonly string[] => {
      const feed = feedInto.get(ownerId);
      const above = feed && feed.circuit !== null ? chainOf(feed.fromId, feed.circuit + 1) : [];
      return [keyOf(ownerId, number), ...above];
    };
    const others = circuits.filter(({ ownerId }) => (sourceAt.get(ownerId) ?? source.id) !== source.id);
    const moves: Move[] = [];
    const staysDark: string[] = [];
    const largestFirst = lost.toSorted((a, b) => b.voltAmperes - a.voltAmperes);
    for (const { loadId } of largestFirst) {
      const load = network.loads.get(loadId);
      if (!load) continue;
      const asked = voltAmperes(load.watts, load.powerFactor);
      const fits = others.find(({ ownerId, number }) => {
        const fromId = sourceAt.get(ownerId) ?? '';
        const amps = asked / (network.sources.get(fromId)?.volts ?? 1);
        return (
          (room.get(keyOf(ownerId, number))?.sockets ?? 0) > 0 &&
          (spare.get(fromId) ?? 0) >= asked &&
          chainOf(ownerId, number).every((key) => (room.get(key)?.amps ?? 0) >= amps)
        );
      });
      if (!fits) {
        staysDark.push(loadId);
        continue;
      }
      const fromId = sourceAt.get(fits.ownerId) ?? '';
      for (const [place, key] of chainOf(fits.ownerId, fits.number).entries()) {
        const at = room.get(key);
        if (!at) continue;
        if (place === 0) at.sockets -= 1;
        at.amps -= asked / (network.sources.get(fromId)?.volts ?? 1);
      }
      spare.set(fromId, (spare.get(fromId) ?? 0) - asked);
      moves.push({ loadId, ownerId: fits.ownerId, circuit: fits.number });
    }
    return [{ sourceId: source.id, goesDark: lost.map(({ loadId }) => loadId), moves, staysDark }];
  });
}
