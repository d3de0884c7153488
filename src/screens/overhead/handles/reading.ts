import type { LengthSystem } from '../../../core/units/lengths';
import { parseLength } from '../../../core/units/lengths';
import { readNumber } from '../../../core/units/numbers';

/** A length that was typed, within two bounds, metres; else a sentence that says what would work. */
export function readMetres(
  text: string,
  lengths: LengthSystem,
  lowest: number,
  highest: number,
): number | string {
  const read = parseLength(text, lengths);
  if (!read.ok) return read.faults[0]?.sentence ?? 'A length, such as 3.2 m.';
  const { value } = read;
  return value < lowest || value > highest
    ? `${text.trim()} is out of reach: ${lowest} m to ${highest} m.`
    : value;
}

/** A bearing that was typed, degrees; else a sentence that says what would work. */
export function readDegrees(text: string): number | string {
  const read = readNumber(text, ['°', 'deg', 'degrees']);
  return read && Math.abs(read.value) <= 360 ? read.value : 'A bearing in degrees, such as 45.';
}

/** Whole steps, without binary noise. */
export const stepped = (value: number, step: number): number =>
  Math.round(Math.round(value / step) * step * 1e6) / 1e6;

/** A turn as the shorter way round, degrees in (−180, 180]. */
export const shorter = (degrees: number): number => {
  const turned = ((degrees % 360) + 360) % 360;
  return turned > 180 ? turned - 360 : turned;
};
