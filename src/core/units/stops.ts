import { notA, type UnitFault } from './faults';
import { formatNumber, formatSigned, NBSP, readNumber } from './numbers';
import { type Result, success } from './result';

/** How far apart two levels are: `+1.5 stops`, `−1.0 stop`. @param stops any finite difference @param decimals 1 unless said */
export function formatStops(stops: number, decimals = 1): string {
  const number = formatSigned(stops, decimals);
  return `${number}${NBSP}${Number(Math.abs(stops).toFixed(decimals)) === 1 ? 'stop' : 'stops'}`;
}

/** How many stops, whichever way: `1.2 stops`, `1.0 stop`. @param stops any finite difference @param decimals 1 unless said */
export function formatStopCount(stops: number, decimals = 1): string {
  const number = formatNumber(Math.abs(stops), decimals);
  return `${number}${NBSP}${Number(number) === 1 ? 'stop' : 'stops'}`;
}

/** Reads a difference in stops: `-1.5`, `+2 stops`. @returns stops, or a fault that says what would be understood */
export function parseStops(text: string): Result<number, UnitFault> {
  const read = readNumber(text, ['stop', 'stops']);
  return read ? success(read.value) : notA('number of stops', text, 'stops, such as −1.5');
}

/** What a lens is set to: `T2.8`, `T11`. @param stop a T number above 0 */
export function formatStopSetting(stop: number): string {
  return `T${formatNumber(stop, Number.isInteger(stop) ? 0 : 1)}`;
}

/** Reads what a lens is set to: `T2.8`, `2.8`. @returns the T number, or a fault that says what would be understood */
export function parseStopSetting(text: string): Result<number, UnitFault> {
  const read = readNumber(text.replace(/^\s*t\s*/i, ''), []);
  return read && read.value > 0 ? success(read.value) : notA('stop', text, 'a stop, such as T2.8');
}
