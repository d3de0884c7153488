import { notA, type UnitFault } from './faults';
import { formatNumber, readNumber } from './numbers';
import { type Result, success } from './result';

/** An angle to read: `39.6°`. @param degrees any finite angle @param decimals 1 unless said */
export function formatDegrees(degrees: number, decimals = 1): string {
  return `${formatNumber(degrees, decimals)}°`;
}

/** A compass heading to read, from `0°` to under `360°`. @param degrees any finite heading @param decimals 0 unless said */
export function formatHeading(degrees: number, decimals = 0): string {
  const turn = Number((((degrees % 360) + 360) % 360).toFixed(decimals));
  return formatDegrees(turn >= 360 ? 0 : turn, decimals);
}

/** Reads an angle: `12`, `12.5°`, `−3 deg`. @returns degrees, or a fault that says what would be understood */
export function parseDegrees(text: string): Result<number, UnitFault> {
  const read = readNumber(text, ['°', 'deg', 'degree', 'degrees']);
  return read ? success(read.value) : notA('number of degrees', text, 'degrees, such as 12.5');
}
