import { notA, type UnitFault } from './faults';
import { formatNumber, NBSP, readNumber } from './numbers';
import { type Result, success } from './result';

/** A time on the action's clock to read: `3.2 s`. @param seconds any finite time @param decimals 1 unless said */
export function formatSeconds(seconds: number, decimals = 1): string {
  return `${formatNumber(seconds, decimals)}${NBSP}s`;
}

/** Reads a time: `3.2`, `3,2 s`, `3.2 seconds`. @returns seconds, or a fault that says what would be understood */
export function parseSeconds(text: string): Result<number, UnitFault> {
  const read = readNumber(text, ['s', 'sec', 'second', 'seconds']);
  return read ? success(read.value) : notA('number of seconds', text, 'seconds, such as 3.2');
}
