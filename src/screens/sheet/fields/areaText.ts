import { type LengthSystem, METRES_PER_INCH } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';

const SQUARE_METRES_PER_SQUARE_FOOT = (12 * METRES_PER_INCH) ** 2;

/** An area to read: `384.0 m²`, or in square feet without decimals. */
export function areaText(squareMetres: number, lengths: LengthSystem): string {
  if (lengths === 'm') return `${formatNumber(squareMetres, 1)}${NBSP}m²`;
  return `${formatNumber(squareMetres / SQUARE_METRES_PER_SQUARE_FOOT, 0)}${NBSP}sq${NBSP}ft`;
}
