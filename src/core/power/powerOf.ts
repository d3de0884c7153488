import type { MainsVolts } from '../kit/powerClasses';
import type { Plan } from '../plan/schema/plan';
import { type Cord, cordOfCable } from './cords';
import { type Flow, flowOf } from './flow';
import { batteryHours, type Fuel, fuelOf } from './fuel';
import { mainsVoltsOf } from './mainsVolts';
import { networkOf } from './network';
import { type NightHours, nightHours } from './nightHours';
import { type CircuitFlow, circuitFlows } from './ratings';
import { type Stop, stopsOf } from './stops';
import type { Source } from './supplies';
import type { Network } from './types';

/** A source through the night. */
export interface SourceState {
  readonly source: Source;
  readonly watts: number;
  readonly voltAmperes: number;
  readonly lossWatts: number;
  readonly legAmps: readonly number[];
  /** With everything as far up as it is dimmed. */
  readonly litWatts: number;
  /** Volt-amperes of its continuous watts, at full; null for the house. An inverter gives no more of either. */
  readonly share: number | null;
  /** All at full, and the load that takes most beyond its watts when it starts, starting last. */
  readonly startWatts: number;
  /** Of its peak watts; null for the house. */
  readonly startShare: number | null;
  readonly fuel: Fuel | null;
  /** How long its battery lasts; null for what is none. */
  readonly batteryHours: number | null;
  readonly stop: Stop | null;
}

/** The power of a plan, worked out. */
export interface Power {
  readonly mainsVolts: MainsVolts;
  readonly hours: NightHours;
  readonly network: Network;
  readonly cords: ReadonlyMap<string, Cord>;
  /** With everything at full. */
  readonly flow: Flow;
  readonly circuits: readonly CircuitFlow[];
  readonly sources: readonly SourceState[];
}

/** The cables of a plan as conductors, by their ids. */
const cordsIn = (plan: Plan): ReadonlyMap<string, Cord> =>
  new Map(
    plan.gear.flatMap((gear) => (gear.kind === 'cable' ? [[gear.id, cordOfCable(plan, gear)] as const] : [])),
  );

/** The power of a plan: what is plugged into what, what flows, what is left, what it burns. @param hours that everything is on */
export function powerOf(plan: Plan, hours: number | null = null): Power {
  const network = networkOf(plan);
  const cords = cordsIn(plan);
  const ohmsOf = (id: string): number => cords.get(id)?.ohms ?? 0;
  const flow = flowOf(network, (id) => network.loads.get(id)?.watts ?? 0, ohmsOf);
  const lit = flowOf(network, (id) => network.loads.get(id)?.litWatts ?? 0, ohmsOf);
  const circuits = circuitFlows(network, flow);
  const night = nightHours(plan, hours);
  const stops = new Map(stopsOf(network, flow, circuits).map((stop) => [stop.sourceId, stop]));
  const sources = [...network.sources.values()].map((source): SourceState => {
    const full = flow.sources.get(source.id);
    const { watts = 0, voltAmperes = 0, lossWatts = 0, legAmps = [] } = full ?? {};
    const litWatts = lit.sources.get(source.id)?.watts ?? 0;
    const starts = [...flow.loads.values()]
      .filter(({ sourceId }) => sourceId === source.id)
      .map((load) => load.watts * ((network.loads.get(load.loadId)?.startTimes ?? 1) - 1));
    const startWatts = watts + Math.max(0, ...starts);
    return {
      source,
      watts,
      voltAmperes,
      lossWatts,
      legAmps,
      litWatts,
      share: source.continuousWatts === null ? null : voltAmperes / source.continuousWatts,
      startWatts,
      startShare: source.peakWatts === null ? null : startWatts / source.peakWatts,
      fuel: fuelOf(source, litWatts, night.hours),
      batteryHours: batteryHours(source, litWatts),
      stop: stops.get(source.id) ?? null,
    };
  });
  return { mainsVolts: mainsVoltsOf(plan), hours: night, network, cords, flow, circuits, sources };
}
