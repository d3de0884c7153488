import { DEPARTMENTS, type Department, type PackingLine } from '../../../../core/night/packing/types';
import { formatNumber, NBSP } from '../../../../core/units/numbers';

/** How many or how much: `3`, `2.4 m`, `384 L`. */
export function amountText(amount: number, unit: PackingLine['unit']): string {
  if (unit === 'pieces') return formatNumber(amount, Number.isInteger(amount) ? 0 : 1);
  if (unit === 'litres') return `${formatNumber(amount, 0)}${NBSP}L`;
  return `${formatNumber(amount, 1)}${NBSP}m`;
}

/** All of a line that goes along, spares counted. */
export const allOf = ({ count, spare }: PackingLine): number => count + spare;

/** What of a line is on top: `1 of it spare`; empty for none. */
export const spareText = ({ spare, unit }: PackingLine): string =>
  spare > 0 ? `${amountText(spare, unit)} of it spare` : '';

/** Lines by whose they are, without departments that have nothing to pack. */
export const byDepartment = (
  lines: readonly PackingLine[],
): readonly { readonly department: Department; readonly lines: readonly PackingLine[] }[] =>
  DEPARTMENTS.map((department) => ({
    department,
    lines: lines.filter((line) => line.department === department),
  })).filter((group) => group.lines.length > 0);

/** How much a list comes to: `41 lines, 96 pieces`. */
export function listTotal(lines: readonly PackingLine[]): string {
  const pieces = lines.reduce((sum, line) => sum + (line.unit === 'pieces' ? allOf(line) : 0), 0);
  const many = (count: number, word: string): string => `${count} ${count === 1 ? word : `${word}s`}`;
  return `${many(lines.length, 'line')}, ${many(pieces, 'piece')}`;
}
