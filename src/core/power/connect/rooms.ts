import type { Power } from '../powerOf';
import { CONTINUOUS_SHARE } from '../ratings';
import type { Place } from './pack';

/** A circuit with a free socket, as somewhere to plug into. */
export interface Socket extends Place {
  readonly ownerId: string;
  /** From 1. */
  readonly circuit: number;
  readonly ratedAmps: number;
  readonly legs: readonly number[];
  readonly free: number;
}

/** Circuits with free sockets, and what is left of all that they draw on, volt-amperes. */
interface Rooms {
  readonly sockets: readonly Socket[];
  readonly room: readonly number[];
}

/**
 * Where cords can be plugged in: each circuit of a source, and of a box that has power, with what is left of its breaker
 * on its first leg up to four fifths, of the inlets and breakers before it, and of its source's continuous watts.
 */
export function roomsOf({ network, circuits, sources, flow }: Power): Rooms {
  const room: number[] = [];
  const known = new Map<string, number>();
  const roomFor = (key: string, voltAmperes: number): number => {
    const at = known.get(key) ?? room.push(Math.max(0, voltAmperes)) - 1;
    known.set(key, at);
    return at;
  };
  const feedInto = new Map(network.feeds.map((feed) => [feed.toId, feed]));
  /** All that power from a circuit on a leg draws on, up to its source. */
  const drawsOf = (ownerId: string, number: number, leg: number): readonly number[] => {
    const feed = feedInto.get(ownerId);
    const source = network.sources.get(feed?.sourceId ?? ownerId);
    const circuit = circuits.find((each) => each.ownerId === ownerId && each.number === number);
    if (!source || !circuit) return [];
    const onLeg = circuit.legAmps[circuit.legs.indexOf(leg)] ?? 0;
    const own = roomFor(
      `breaker ${ownerId} ${number} ${leg}`,
      (circuit.ratedAmps * CONTINUOUS_SHARE - onLeg) * source.volts,
    );
    if (!feed) {
      const state = sources.find((each) => each.source.id === source.id);
      const left = (source.continuousWatts ?? Number.POSITIVE_INFINITY) - (state?.voltAmperes ?? 0);
      return [own, roomFor(`source ${source.id}`, left)];
    }
    const distro = network.distros.get(ownerId);
    const inlet = flow.cords.get(feed.cableId)?.legAmps[feed.legs.indexOf(leg)] ?? 0;
    const inletLeft = ((distro?.inputAmps ?? 0) * CONTINUOUS_SHARE - inlet) * source.volts;
    const above = feed.circuit === null ? [] : drawsOf(feed.fromId, feed.circuit + 1, leg);
    return [own, roomFor(`inlet ${ownerId} ${leg}`, inletLeft), ...above];
  };
  const sockets = circuits.flatMap(
    ({ ownerId, number, ratedAmps, legs, sockets: all, cableIds }): Socket[] => {
      const free = all - cableIds.length;
      if (free <= 0) return [];
      return [{ ownerId, circuit: number, ratedAmps, legs, free, draws: drawsOf(ownerId, number, legs[0]) }];
    },
  );
  return { sockets, room };
}
