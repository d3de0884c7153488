import { notA, type UnitFault } from './faults';
import { formatNumber, NBSP, readNumber } from './numbers';
import { type Result, success } from './result';

/**
 * A share to read, in per cent with as many decimals as its size asks for: `38 %`, `1.1 %`, `0.03 %`,
 * and `under 0.01 %` for what is there but smaller.
 * @param share any finite share, 1 for the whole
 */
export function formatShare(share: number): string {
  const percent = Math.abs(share) * 100;
  if (percent > 0 && percent < 0.005) return `under${NBSP}0.01${NBSP}%`;
  const decimals = percent === 0 || percent >= 9.95 ? 0 : percent >= 0.0995 ? 1 : 2;
  return `${formatNumber(share * 100, decimals)}${NBSP}%`;
}

/** Reads a share in per cent: `1.1 %`, `1.1`. @returns the share, 1 for the whole, or a fault that says what would be understood */
export function parseShare(text: string): Result<number, UnitFault> {
  const read = readNumber(text, ['%', 'per cent', 'percent']);
  return read ? success(read.value / 100) : notA('share', text, 'per cent, such as 1.1 %');
}
