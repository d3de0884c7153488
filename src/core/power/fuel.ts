import { BATTERY_YIELD } from '../kit/powerClasses';
import type { Source } from './supplies';

/** A tank is filled again when no more than this share of it is left. Source: common practice, no source */
const RESERVE_SHARE = 0.1;

type Burn = readonly [quarter: number, half: number, threeQuarters: number, full: number];

/**
 * What a generator burns at a share of its continuous watts, litres an hour: straight between the four numbers of its
 * plate, on along the first two below a quarter, though not under half of what it burns there, and along the last two
 * above full. Source: [generator-burn]
 */
export function burnAt(burn: Burn, share: number): number {
  const quarters = Math.max(share, 0) * 4;
  const first = Math.min(Math.max(Math.floor(quarters), 1), 3) - 1;
  const along = burn[first] + (burn[first + 1] - burn[first]) * (quarters - (first + 1));
  return quarters < 1 ? Math.max(along, burn[0] / 2) : along;
}

/** What a generator burns through a night. */
export interface Fuel {
  readonly fuel: 'petrol' | 'diesel';
  readonly litresPerHour: number;
  /** Through all hours. */
  readonly litres: number;
  /** Beyond a tank that is full at the start. */
  readonly bringLitres: number;
  /** How long a full tank lasts down to its reserve, hours. */
  readonly tankHours: number;
  /** Hours from the start at which it is filled again. */
  readonly refillHours: readonly number[];
}

/** More fillings than this are not listed one by one. */
const MOST_REFILLS = 60;

/** What a generator burns through so many hours at so many watts; null for what burns nothing. */
export function fuelOf({ engine, continuousWatts }: Source, watts: number, hours: number): Fuel | null {
  if (!engine || continuousWatts === null) return null;
  const { fuel, tankLitres, litresPerHour: burn } = engine;
  // With nothing to feed it is not running.
  const litresPerHour = watts > 0 ? burnAt(burn, watts / continuousWatts) : 0;
  const litres = litresPerHour * hours;
  const usable = tankLitres * (1 - RESERVE_SHARE);
  const tankHours = litresPerHour > 0 ? usable / litresPerHour : Number.POSITIVE_INFINITY;
  const count = Number.isFinite(tankHours)
    ? Math.min(MOST_REFILLS, Math.max(0, Math.ceil(hours / tankHours - 1e-9) - 1))
    : 0;
  return {
    fuel,
    litresPerHour,
    litres,
    bringLitres: Math.max(0, litres - usable),
    tankHours,
    refillHours: Array.from({ length: count }, (_, k) => (k + 1) * tankHours),
  };
}

/** How long a battery lasts at so many watts, hours; null for what is none, infinite where nothing is drawn. */
export function batteryHours({ wattHours }: Source, watts: number): number | null {
  if (wattHours === null) return null;
  return watts > 0 ? (wattHours * BATTERY_YIELD) / watts : Number.POSITIVE_INFINITY;
}
