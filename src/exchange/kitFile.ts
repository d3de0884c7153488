import Papa from 'papaparse';
import { quoteFound } from '../core/plan/faults';

/** A row of a table in comma-separated values: its line in the file, and its cells by the names in the first row. */
export interface TableRow {
  readonly line: number;
  readonly cells: ReadonlyMap<string, string>;
}

/** What is wrong with a table: where, what was found, what was expected; `sentence` says all in one line. */
export interface TableFault {
  /** Counted from 1, as an editor counts. */
  readonly line: number;
  readonly column: string | null;
  readonly sentence: string;
}

export interface Table {
  readonly rows: readonly TableRow[];
  readonly faults: readonly TableFault[];
}

/** Makes a fault and its one line. */
export const tableFault = (
  line: number,
  column: string | null,
  found: string,
  expected: string,
): TableFault => ({
  line,
  column,
  sentence: `Line ${line}${column === null ? '' : `, ${column}`}: found ${found}, expected ${expected}.`,
});

/** As much as a kit of the allowed size takes: letters of a table, and its rows, a hundred bodies with forty gate modes each and the row of names. */
export const KIT_TABLE_LIMITS = { letters: 8 * 1024 * 1024, rows: 100 * 40 + 1 } as const;

const SEPARATORS = [',', ';', '\t'] as const;
/** What a spreadsheet would run, and what guards it; the guard is doubled before what begins with it. */
const GUARDED = /^'(?=[='+\-@\t\r])/;

/** A found cell in a few characters. */
export const quoted = (cell: string): string => (cell === '' ? 'nothing' : quoteFound(cell));

/** Text as it goes into a cell, so that {@link readTable} gives it back as it was. */
export const cellOfText = (text: string): string => (text.startsWith("'") ? `'${text}` : text);

const separatorOf = (text: string): string => {
  const [header] = text.split(/\r\n|\n|\r/, 1);
  const counts = SEPARATORS.map((separator) => header.split(separator).length);
  return SEPARATORS[counts.indexOf(Math.max(...counts))];
};

/**
 * Reads a table in comma-separated values by RFC 4180; semicolons and tabs, which spreadsheets write too, do as well.
 * The first row names the columns: each of `needed` has to be there, and none but `known`.
 *
 * @returns rows with their lines, and what cannot be read; a row with a fault of its own is left out, and nothing is read
 * of a table beyond {@link KIT_TABLE_LIMITS}
 */
export function readTable(file: string, known: readonly string[], needed: readonly string[]): Table {
  const text = file.charCodeAt(0) === 0xfeff ? file.slice(1) : file;
  const refused = (line: number, what: string, expected: string): Table => ({
    rows: [],
    faults: [tableFault(line, null, what, expected)],
  });
  if (text.length > KIT_TABLE_LIMITS.letters)
    return refused(1, `${text.length} letters`, `a table of at most ${KIT_TABLE_LIMITS.letters}`);
  if (text.trim() === '') return refused(1, 'nothing', 'a first row with the names of the columns');
  const found: {
    readonly line: number;
    readonly cells: readonly string[];
    readonly broken: string | null;
  }[] = [];
  let line = 1;
  let from = 0;
  Papa.parse<string[]>(text, {
    delimiter: separatorOf(text),
    step: ({ data, errors, meta }, parser) => {
      if (found.length > KIT_TABLE_LIMITS.rows) {
        parser.abort();
        return;
      }
      const isBlank = data.every((cell) => cell.trim() === '');
      if (!isBlank) found.push({ line, cells: data, broken: errors[0]?.message ?? null });
      line += (text.slice(from, meta.cursor).match(/\r\n|\n|\r/g) ?? []).length;
      from = meta.cursor;
    },
  });
  if (found.length > KIT_TABLE_LIMITS.rows)
    return refused(
      found[KIT_TABLE_LIMITS.rows].line,
      'one row more',
      `a table of at most ${KIT_TABLE_LIMITS.rows} rows`,
    );
  const [header, ...body] = found;
  if (!header) return refused(1, 'nothing', 'the names of the columns');
  const names = header.cells.map((cell) => cell.trim());
  const faults = [...headerFaults(header.line, names, known, needed)];
  if (faults.length > 0) return { rows: [], faults };
  const rows: TableRow[] = [];
  for (const { line: at, cells, broken } of body) {
    const extra = cells.slice(names.length).find((cell) => cell !== '');
    if (broken !== null)
      faults.push(tableFault(at, null, 'a quotation mark that is not closed', 'one that is'));
    else if (extra !== undefined)
      faults.push(tableFault(at, null, `${cells.length} cells`, `${names.length}, as in the first row`));
    else
      rows.push({
        line: at,
        cells: new Map(names.map((name, k) => [name, (cells[k] ?? '').replace(GUARDED, '')])),
      });
  }
  return { rows, faults };
}

function headerFaults(
  line: number,
  names: readonly string[],
  known: readonly string[],
  needed: readonly string[],
): TableFault[] {
  return [
    ...names.flatMap((name, at) => {
      if (!known.includes(name))
        return [tableFault(line, quoted(name), 'a column that is not known', known.join(', '))];
      return names.indexOf(name) < at ? [tableFault(line, name, 'it twice', 'each column once')] : [];
    }),
    ...needed.flatMap((name) =>
      names.includes(name) ? [] : [tableFault(line, name, 'nothing', 'a column of that name')],
    ),
  ];
}
