import { awgAreaMm2 } from '../../kit/powerCords';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import type { Wire } from '../../plan/schema/power';
import { duration } from '../../units/durations';
import { formatNumber, NBSP } from '../../units/numbers';
import { listed } from '../listed';

/** `350 W`, `2.8 kW`. */
export const wattWords = (watts: number): string =>
  Math.abs(watts) >= 1999.5
    ? `${formatNumber(watts / 1000, 1)}${NBSP}kW`
    : `${formatNumber(watts, 0)}${NBSP}W`;

/** `350 VA`, `2.8 kVA`. */
export const voltAmpereWords = (voltAmperes: number): string =>
  Math.abs(voltAmperes) >= 1999.5
    ? `${formatNumber(voltAmperes / 1000, 1)}${NBSP}kVA`
    : `${formatNumber(voltAmperes, 0)}${NBSP}VA`;

/** `3.1 A`, `24 A`. */
export const ampWords = (amps: number): string =>
  `${formatNumber(amps, Math.abs(amps) >= 99.5 || Number.isInteger(amps) ? 0 : 1)}${NBSP}A`;

/** `116.2 V`. */
export const voltWords = (volts: number): string => `${formatNumber(volts, 1)}${NBSP}V`;

/** `4 h 30 min`, `35 min`. */
export const hourWords = (hours: number): string => duration(hours * 60);

/** `6.1 L`. */
export const litreWords = (litres: number): string => `${formatNumber(litres, 1)}${NBSP}L`;

/** `12 AWG (3.31 mm²)`, `2.5 mm²`. */
export const wireWords = (wire: Wire): string =>
  'awg' in wire
    ? `${wire.awg}${NBSP}AWG (${formatNumber(awgAreaMm2(wire.awg), 2)}${NBSP}mm²)`
    : `${formatNumber(wire.mm2, Number.isInteger(wire.mm2) ? 0 : 1)}${NBSP}mm²`;

/** An item's name; its id where the plan does not have it. */
export const nameIn = ({ gear, cast }: Plan, id: string): string =>
  gear.find((each) => each.id === id)?.label ?? cast.find((each) => each.id === id)?.label ?? id;

/** The same as it stands within a sentence. */
export const namedIn = (plan: Plan, id: string): string => named(nameIn(plan, id));

const MOST_NAMED = 4;

/** `Head 1, Head 2 and Head 3`, `Head 1, Head 2, Head 3, Head 4 and 5 more`. */
export function namesIn(plan: Plan, ids: readonly string[]): string {
  const names = ids.slice(0, MOST_NAMED).map((id) => namedIn(plan, id));
  return listed(ids.length > MOST_NAMED ? [...names, `${ids.length - MOST_NAMED} more`] : names);
}
