import { notA, type UnitFault } from './faults';
import type { LengthSystem } from './lengths';
import { formatNumber, NBSP, readNumber } from './numbers';
import { type Result, success } from './result';

/** How levels of light are shown and what a bare number means: lux or footcandles. */
export type LightUnit = 'lx' | 'fc';

/** Levels go with lengths: footcandles where feet are read. */
export const lightUnitOf = (lengths: LengthSystem): LightUnit => (lengths === 'm' ? 'lx' : 'fc');

/**
 * Lumens on a square foot are this many on a square metre: 1 ÷ 0.3048².
 *
 * Source: [gnu-units]
 */
export const LUX_PER_FOOTCANDLE = 1 / (0.3048 * 0.3048);

/** A level with as many decimals as its size asks for. */
function inDigits(level: number): string {
  const size = Math.abs(level);
  return formatNumber(level, size >= 9.95 ? 0 : size >= 0.995 ? 1 : 2);
}

/** A level of light to read: `420 lx`, `3.6 lx`, `39 fc`. @param lux any finite level of at least 0 */
export function formatLight(lux: number, unit: LightUnit): string {
  return `${inDigits(unit === 'lx' ? lux : lux / LUX_PER_FOOTCANDLE)}${NBSP}${unit}`;
}

const LUX_WORDS = ['lx', 'lux'];
const FOOTCANDLE_WORDS = ['fc', 'ftc', 'footcandle', 'footcandles', 'foot-candles'];

/**
 * Reads a level of light: `420`, `420 lx`, `39 fc`.
 * @param unit what a bare number is in
 * @returns lux, or a fault that says what would be understood
 */
export function parseLight(text: string, unit: LightUnit): Result<number, UnitFault> {
  const read = readNumber(text, [...LUX_WORDS, ...FOOTCANDLE_WORDS]);
  if (!read || read.value < 0)
    return notA('level of light', text, 'lux, such as 420 lx, or footcandles, 39 fc');
  const isLux = read.unit === null ? unit === 'lx' : LUX_WORDS.includes(read.unit);
  return success(isLux ? read.value : read.value * LUX_PER_FOOTCANDLE);
}
