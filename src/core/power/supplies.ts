import { BATTERY_CLASSES, classOfSize, DISTRO, GENERATOR_CLASSES, HOUSE_CIRCUIT } from '../kit/powerClasses';
import type { Gear } from '../plan/schema/gear';
import type { Plan } from '../plan/schema/plan';
import type { Circuit, GeneratorPower } from '../plan/schema/power';
import { mainsVoltsOf } from './mainsVolts';

/** A breaker, the sockets behind it, and the legs that it carries, from 1. */
export interface Breaker {
  readonly amps: number;
  readonly sockets: number;
  readonly legs: readonly number[];
}

/** Where power comes from. */
export interface Source {
  readonly id: string;
  readonly label: string;
  readonly kind: 'generator' | 'outlet' | 'battery';
  /** From each leg to the neutral. */
  readonly volts: number;
  /** How many legs it has: 1; 2 of opposite phase; 3 a third of a turn apart. */
  readonly legCount: number;
  /** Null for the house, of which only the breakers are known. */
  readonly continuousWatts: number | null;
  readonly peakWatts: number | null;
  readonly circuits: readonly Breaker[];
  readonly engine: Pick<GeneratorPower, 'fuel' | 'tankLitres' | 'litresPerHour'> | null;
  readonly wattHours: number | null;
  /** Whether its numbers are those of its size's class, since the plan says none. */
  readonly isAssumed: boolean;
}

/** A box that divides a supply. */
export interface Distro {
  readonly id: string;
  readonly label: string;
  readonly inputAmps: number;
  readonly circuits: readonly Breaker[];
  readonly isAssumed: boolean;
}

const breakersOf = (circuits: readonly Circuit[]): readonly Breaker[] =>
  circuits.map(({ amps, sockets, legs }) => ({ amps, sockets, legs: legs ?? [1] }));

const legsIn = (circuits: readonly Breaker[]): number => Math.max(...circuits.flatMap(({ legs }) => legs));

/** A piece of gear as a source; null for what is none. */
export function sourceOf(plan: Plan, gear: Gear): Source | null {
  const mains = mainsVoltsOf(plan);
  const common = { id: gear.id, label: gear.label };
  if (gear.kind === 'generator') {
    const power = gear.power ?? classOfSize(GENERATOR_CLASSES, gear.size).power[mains];
    const { volts, continuousWatts, peakWatts, fuel, tankLitres, litresPerHour } = power;
    const circuits = breakersOf(power.circuits);
    return {
      ...common,
      kind: 'generator',
      volts,
      legCount: legsIn(circuits),
      continuousWatts,
      peakWatts,
      circuits,
      engine: { fuel, tankLitres, litresPerHour },
      wattHours: null,
      isAssumed: !gear.power,
    };
  }
  if (gear.kind === 'battery') {
    const power = gear.power ?? classOfSize(BATTERY_CLASSES, gear.size).power[mains];
    const { volts, continuousWatts, peakWatts, wattHours } = power;
    const circuits = breakersOf(power.circuits);
    return {
      ...common,
      kind: 'battery',
      volts,
      legCount: legsIn(circuits),
      continuousWatts,
      peakWatts,
      circuits,
      engine: null,
      wattHours,
      isAssumed: !gear.power,
    };
  }
  if (gear.kind !== 'outlet') return null;
  const power = gear.power ?? HOUSE_CIRCUIT[mains];
  const circuits = breakersOf(power.circuits);
  return {
    ...common,
    kind: 'outlet',
    volts: power.volts,
    legCount: legsIn(circuits),
    continuousWatts: null,
    peakWatts: null,
    circuits,
    engine: null,
    wattHours: null,
    isAssumed: !gear.power,
  };
}

/** All sources of a plan, in its order. */
export const sourcesOf = (plan: Plan): readonly Source[] =>
  plan.gear.flatMap((gear) => {
    const source = sourceOf(plan, gear);
    return source ? [source] : [];
  });

/** A piece of gear as a box that divides; null for what is none. */
function distroOf(plan: Plan, gear: Gear): Distro | null {
  if (gear.kind !== 'distro') return null;
  const { inputAmps, circuits } = gear.power ?? DISTRO[mainsVoltsOf(plan)];
  return {
    id: gear.id,
    label: gear.label,
    inputAmps,
    circuits: breakersOf(circuits),
    isAssumed: !gear.power,
  };
}

/** All boxes that divide, in the plan's order. */
export const distrosOf = (plan: Plan): readonly Distro[] =>
  plan.gear.flatMap((gear) => {
    const distro = distroOf(plan, gear);
    return distro ? [distro] : [];
  });
