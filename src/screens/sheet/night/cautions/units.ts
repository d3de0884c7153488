import { fromMilesPerHour, milesPerHour } from '../../../../core/cautions/wind/beaufort';
import type { LengthSystem } from '../../../../core/units/lengths';
import { formatNumber, readNumber } from '../../../../core/units/numbers';

/** A unit in which something is shown and typed, beside the plan's own. */
interface Unit {
  readonly name: string;
  readonly decimals: number;
  /** From the plan's unit, and back. */
  readonly shown: (value: number) => number;
  readonly meant: (value: number) => number;
}

/** By units of length: whoever measures in feet has winds in miles an hour and loads in pounds. */
export type UnitPair = Readonly<Record<LengthSystem, Unit>>;

const same = (value: number): number => value;
const times = (name: string, decimals: number, own: number): Unit => ({
  name,
  decimals,
  shown: (value) => value / own,
  meant: (value) => value * own,
});

/** A pound-force in kN, and over a square foot in kN/m²; exact by definition. Source: common practice, no source */
const POUND_FORCE = 0.0044482216152605;
const SQUARE_FOOT = 0.09290304;

export const WIND: UnitPair = {
  m: { name: 'm/s', decimals: 1, shown: same, meant: same },
  'ft-in': { name: 'mph', decimals: 1, shown: milesPerHour, meant: fromMilesPerHour },
};
export const AREA_LOAD: UnitPair = {
  m: { name: 'kN/m²', decimals: 2, shown: same, meant: same },
  'ft-in': times('lbf/ft²', 0, POUND_FORCE / SQUARE_FOOT),
};
export const FOOT_LOAD: UnitPair = {
  m: { name: 'kN', decimals: 2, shown: same, meant: same },
  'ft-in': times('lbf', 0, POUND_FORCE),
};

/** A value of the plan as the number that is shown. */
export function printIn(pair: UnitPair, lengths: LengthSystem, value: number): string {
  const { shown, decimals } = pair[lengths];
  return formatNumber(shown(value), decimals);
}

/** What is typed, in the unit shown or with either unit behind it, as a value of the plan; null where it is no such number. */
export function readIn(pair: UnitPair, lengths: LengthSystem, text: string): number | null {
  const units = [pair.m, pair['ft-in']];
  const read = readNumber(
    text,
    units.map(({ name }) => name.toLowerCase()),
  );
  if (!read) return null;
  const unit = units.find(({ name }) => name.toLowerCase() === read.unit) ?? pair[lengths];
  return unit.meant(read.value);
}
