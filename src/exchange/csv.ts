/** A cell: numbers are written as they are, not rounded; null is an empty cell. */
export type CsvCell = string | number | null;

/** A cell whose text is gone over, as what shows on a terminal is; numbers stay. */
export const cleanCell =
  (clean: (text: string) => string) =>
  (cell: CsvCell): CsvCell =>
    typeof cell === 'string' ? clean(cell) : cell;

/** A spreadsheet takes text that starts like this for a formula and runs it. */
const FORMULA_START = /^[=+\-@\t\r]/;
const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/;

/**
 * Rows as comma-separated values by RFC 4180: lines end in CR LF, text is quoted where it must be. Text that a
 * spreadsheet would run as a formula gets an apostrophe before it.
 */
export function csvOf(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}

function cellText(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  const guarded = FORMULA_START.test(cell) ? `'${cell}` : cell;
  return NEEDS_QUOTES.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
