import { formatNumber, NBSP, readNumber } from '../../../core/units/numbers';

/** What a field takes. */
export interface Legal {
  /** What the numbers are, as the sentence begins: `Focal lengths`. */
  readonly what: string;
  readonly limits: readonly [lowest: number, highest: number];
  readonly unit?: string;
  readonly decimals?: number;
  readonly whole?: boolean;
  /** Written in one go however long, as ISO numbers and kelvin are everywhere. */
  readonly inOneGo?: boolean;
}

export type ReadLegal =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly sentence: string; readonly nearest: number | null };

/** A number with thousands set apart and no more decimals than it has. */
export function numberWord(value: number, decimals = 3): string {
  const text = formatNumber(value, decimals)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
  const [whole = '', rest] = text.split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return rest === undefined ? grouped : `${grouped}.${rest}`;
}

/** A number as the field prints it, without its unit. */
export const fieldWord = (
  value: number,
  { decimals, inOneGo = false }: Pick<Legal, 'decimals' | 'inOneGo'>,
): string => {
  const word = numberWord(value, decimals);
  return inOneGo ? word.replaceAll(',', '') : word;
};

/** A number as the field prints it, with its unit. */
export const printed = (value: number, { unit, inOneGo }: Pick<Legal, 'unit' | 'inOneGo'>): string => {
  const word = fieldWord(value, inOneGo === undefined ? {} : { inOneGo });
  return unit ? `${word}${unit === '°' ? '' : NBSP}${unit}` : word;
};

/** Reads a typed number; what is out of range is refused with the range and the nearest that is in it. */
export function readLegal(text: string, legal: Legal): ReadLegal {
  const { what, limits, unit, whole = false } = legal;
  const [lowest, highest] = limits;
  // Thousands may be set apart, as they are printed.
  const plain = text.trim().replace(/(\d),(?=\d{3}(?:\D|$))/g, '$1');
  const read = readNumber(plain, unit === undefined ? [] : [unit]);
  const range = `${what} run from ${printed(lowest, legal)} to ${printed(highest, legal)}.`;
  if (!read) {
    return { ok: false, sentence: `${JSON.stringify(text.trim())} is not a number. ${range}`, nearest: null };
  }
  const value = whole ? Math.round(read.value) : read.value;
  if (value >= lowest && value <= highest) return { ok: true, value };
  return { ok: false, sentence: range, nearest: Math.min(highest, Math.max(lowest, value)) };
}
