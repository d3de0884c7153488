import { voltAmperes } from './loads';
import type { Feed, Network } from './types';

/** A cable as it carries. */
interface CordFlow {
  readonly cableId: string;
  /** On each of its legs, in the order of the feed's. */
  readonly legAmps: readonly number[];
  readonly neutralAmps: number;
  /** The most that one of its lines carries. */
  readonly amps: number;
  /** Volts lost on the way there and back, on its worst leg. */
  readonly dropVolts: number;
  /** Turned into heat along it. */
  readonly lossWatts: number;
  /** What goes in at its near end. */
  readonly watts: number;
  readonly voltAmperes: number;
}

/** A load as it is fed. */
interface LoadFlow {
  readonly loadId: string;
  readonly sourceId: string;
  readonly leg: number;
  readonly watts: number;
  readonly voltAmperes: number;
  readonly amps: number;
  readonly volts: number;
  /** Of the source's volts, what is lost up to it, 0..1. */
  readonly dropShare: number;
}

/** A source as it gives. */
interface SourceFlow {
  readonly sourceId: string;
  readonly watts: number;
  readonly voltAmperes: number;
  readonly lossWatts: number;
  /** On each of its legs, from the first. */
  readonly legAmps: readonly number[];
}

/** How power flows through all that is fed. */
export interface Flow {
  readonly cords: ReadonlyMap<string, CordFlow>;
  readonly loads: ReadonlyMap<string, LoadFlow>;
  readonly sources: ReadonlyMap<string, SourceFlow>;
  /** Loads that no voltage suffices for: their cords are too long or too thin for what they draw. */
  readonly collapsed: readonly string[];
}

/** How far out of step two legs are, as a cosine: all of one, opposite of two, a third of a turn of three. */
const inStep = (legCount: number, a: number, b: number): number =>
  a === b || legCount === 1 ? 1 : legCount === 2 ? -1 : -0.5;

/** Of the source's volts; below half of them a load of constant power cannot be fed at all. */
const COLLAPSED_SHARE = 0.5;
const MOST_SWEEPS = 4000;
/** Volts: sweeps end where none of them changes by more. */
const STILL_VOLTS = 1e-11;

/**
 * Solves a source's tree: loads of constant volt-amperes behind conductors of plain resistance, currents in step with
 * their leg. Currents are summed from the loads inward, volts are taken off from the source outward, until they stay. On
 * each leg a cord loses its own current times its ohms, and, in the neutral, the sum of all legs' currents as far as they
 * are in step with it: twice its ohms for one leg, half of that where two opposite legs are in balance. Left out:
 * inductance, which is a few hundredths of the ohms in such cords, and that the source's own volts give way.
 * Source: [load-flow], [drop-formula]
 *
 * @param draw what a load draws, watts
 * @param ohmsOf of one conductor of a cable
 */
export function flowOf(
  network: Network,
  draw: (loadId: string) => number,
  ohmsOf: (cableId: string) => number,
): Flow {
  const cords = new Map<string, CordFlow>();
  const loads = new Map<string, LoadFlow>();
  const sources = new Map<string, SourceFlow>();
  const collapsed: string[] = [];
  for (const source of network.sources.values()) {
    const feeds = network.feeds.filter(({ sourceId }) => sourceId === source.id);
    const solved = solve(network, source.id, feeds, draw, ohmsOf);
    for (const cord of solved.cords) cords.set(cord.cableId, cord);
    for (const load of solved.loads) loads.set(load.loadId, load);
    collapsed.push(...solved.collapsed);
    const legAmps = Array.from({ length: source.legCount }, () => 0);
    for (const [k, feed] of feeds.entries())
      if (feed.fromId === source.id)
        feed.legs.forEach((leg, n) => {
          legAmps[leg - 1] += solved.cords[k].legAmps[n];
        });
    const lossWatts = solved.cords.reduce((sum, cord) => sum + cord.lossWatts, 0);
    sources.set(source.id, {
      sourceId: source.id,
      watts: solved.loads.reduce((sum, load) => sum + load.watts, lossWatts),
      voltAmperes: legAmps.reduce((sum, amps) => sum + amps * source.volts, 0),
      lossWatts,
      legAmps,
    });
  }
  return { cords, loads, sources, collapsed };
}

function solve(
  network: Network,
  sourceId: string,
  feeds: readonly Feed[],
  draw: (loadId: string) => number,
  ohmsOf: (cableId: string) => number,
) {
  const source = network.sources.get(sourceId);
  if (!source) throw new Error(`A flow from “${sourceId}”: expected a source of the network`);
  const { volts: open, legCount } = source;
  const feedInto = new Map(feeds.map((feed, k) => [feed.toId, k] as const));
  /** The feed before each, −1 at the source. */
  const before = feeds.map(({ fromId }) => feedInto.get(fromId) ?? -1);
  const ohms = feeds.map(({ cableId }) => ohmsOf(cableId));
  const own = feeds.map(({ toId }) => {
    const load = network.loads.get(toId);
    return load ? { load, asked: voltAmperes(draw(toId), load.powerFactor) } : null;
  });
  const amps = feeds.map(() => new Float64Array(legCount));
  const volts = feeds.map(() => new Float64Array(legCount).fill(open));
  const floor = open * COLLAPSED_SHARE;
  const ownAmps = (k: number): number => {
    const asked = own[k]?.asked ?? 0;
    return asked === 0 ? 0 : asked / Math.max(volts[k][feeds[k].legs[0] - 1], floor);
  };
  const dropOf = (k: number, leg: number): number => {
    let neutral = 0;
    for (const other of feeds[k].legs) neutral += inStep(legCount, leg, other) * amps[k][other - 1];
    return ohms[k] * (amps[k][leg - 1] + neutral);
  };
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep += 1) {
    for (const each of amps) each.fill(0);
    for (let k = feeds.length - 1; k >= 0; k -= 1) {
      amps[k][feeds[k].legs[0] - 1] += ownAmps(k);
      if (before[k] >= 0) for (let leg = 0; leg < legCount; leg += 1) amps[before[k]][leg] += amps[k][leg];
    }
    let moved = 0;
    for (let k = 0; k < feeds.length; k += 1)
      for (const leg of feeds[k].legs) {
        const near = before[k] < 0 ? open : volts[before[k]][leg - 1];
        const far = near - dropOf(k, leg);
        moved = Math.max(moved, Math.abs(far - volts[k][leg - 1]));
        volts[k][leg - 1] = far;
      }
    if (moved <= STILL_VOLTS) break;
  }
  const cords = feeds.map((feed, k): CordFlow => {
    const legAmps = feed.legs.map((leg) => amps[k][leg - 1]);
    let squared = 0;
    for (const a of feed.legs)
      for (const b of feed.legs) squared += inStep(legCount, a, b) * amps[k][a - 1] * amps[k][b - 1];
    const neutralAmps = Math.sqrt(Math.max(squared, 0));
    const nearVolts = (leg: number): number => (before[k] < 0 ? open : volts[before[k]][leg - 1]);
    return {
      cableId: feed.cableId,
      legAmps,
      neutralAmps,
      amps: Math.max(...legAmps, neutralAmps),
      dropVolts: Math.max(...feed.legs.map((leg) => dropOf(k, leg))),
      lossWatts: ohms[k] * (legAmps.reduce((sum, each) => sum + each * each, 0) + Math.max(squared, 0)),
      watts: 0,
      voltAmperes: feed.legs.reduce((sum, leg) => sum + nearVolts(leg) * amps[k][leg - 1], 0),
    };
  });
  const watts = cords.map(({ lossWatts }) => lossWatts);
  const loads = feeds.flatMap((feed, k): LoadFlow[] => {
    const load = own[k]?.load;
    if (!load) return [];
    const leg = feed.legs[0];
    const at = volts[k][leg - 1];
    const drawn = ownAmps(k);
    const fed = drawn * at;
    watts[k] += fed * load.powerFactor;
    return [
      {
        loadId: load.id,
        sourceId,
        leg,
        watts: fed * load.powerFactor,
        voltAmperes: fed,
        amps: drawn,
        volts: at,
        dropShare: 1 - at / open,
      },
    ];
  });
  for (let k = feeds.length - 1; k >= 0; k -= 1) if (before[k] >= 0) watts[before[k]] += watts[k];
  return {
    cords: cords.map((cord, k): CordFlow => ({ ...cord, watts: watts[k] })),
    loads,
    collapsed: loads.filter(({ volts: at }) => at <= floor + 1e-6).map(({ loadId }) => loadId),
  };
}
