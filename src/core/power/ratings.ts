import { loadsBehind } from './behind';
import type { Flow } from './flow';
import type { Breaker } from './supplies';
import type { Feed, Network } from './types';

/** A load that is on for three hours may take this much of a breaker. Source: [continuous-load] */
export const CONTINUOUS_SHARE = 0.8;
/** Of the source's volts, what a lamp may lose on its way. Source: [drop-limits] */
export const DROP_SHARE = 0.03;
/** The same with the feeder to a box. Source: [drop-limits] */
export const WHOLE_DROP_SHARE = 0.05;

/** A breaker as it is loaded. */
export interface CircuitFlow {
  readonly ownerId: string;
  /** Its number at its owner, from 1. */
  readonly number: number;
  readonly ratedAmps: number;
  readonly sockets: number;
  readonly cableIds: readonly string[];
  readonly loadIds: readonly string[];
  readonly watts: number;
  readonly voltAmperes: number;
  /** On each of its legs, in their order. */
  readonly legAmps: readonly number[];
  readonly legs: readonly number[];
  /** Of its rating, on its worst leg, 0..1 and more. */
  readonly share: number;
  /** Of four fifths of its rating: what it may carry for three hours and more. */
  readonly continuousShare: number;
}

/** All breakers of what is fed, sources first. */
export function circuitFlows(network: Network, flow: Flow): readonly CircuitFlow[] {
  const feedInto = new Map(network.feeds.map((feed) => [feed.toId, feed]));
  const owners: {
    id: string;
    circuits: readonly Breaker[];
    feeds: readonly Feed[];
    own: readonly number[];
  }[] = [];
  for (const owner of [...network.sources.values(), ...network.distros.values()]) {
    const feeds = network.feeds.filter(({ fromId }) => fromId === owner.id);
    const own =
      'legCount' in owner
        ? Array.from({ length: owner.legCount }, (_, leg) => leg + 1)
        : (feedInto.get(owner.id)?.legs ?? [1]);
    if ('legCount' in owner || feedInto.has(owner.id))
      owners.push({ id: owner.id, circuits: owner.circuits, feeds, own });
  }
  return owners.flatMap(({ id, circuits, feeds, own }) =>
    circuits.map((breaker, k): CircuitFlow => {
      const legs = [...new Set(breaker.legs.map((leg) => own[(leg - 1) % own.length]))];
      const here = feeds.filter(({ circuit }) => circuit === k);
      const flows = here.flatMap((feed) => {
        const cord = flow.cords.get(feed.cableId);
        return cord ? [{ feed, cord }] : [];
      });
      const legAmps = legs.map((leg) =>
        flows.reduce((sum, { feed, cord }) => sum + (cord.legAmps[feed.legs.indexOf(leg)] ?? 0), 0),
      );
      const share = Math.max(...legAmps) / breaker.amps;
      return {
        ownerId: id,
        number: k + 1,
        ratedAmps: breaker.amps,
        sockets: breaker.sockets,
        cableIds: here.map(({ cableId }) => cableId),
        loadIds: here.flatMap((feed) => loadsBehind(network, feed.cableId)),
        watts: flows.reduce((sum, { cord }) => sum + cord.watts, 0),
        voltAmperes: flows.reduce((sum, { cord }) => sum + cord.voltAmperes, 0),
        legAmps,
        legs,
        share,
        continuousShare: share / CONTINUOUS_SHARE,
      };
    }),
  );
}
