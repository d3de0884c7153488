import * as v from 'valibot';
import {
  type Body,
  body as bodySchema,
  LENS_LIMITS,
  type Lens,
  lens as lensSchema,
  MODE_LIMITS,
} from '../core/plan/schema/kit';
import { readNumber } from '../core/units/numbers';
import { type CsvCell, csvOf } from './csv';
import { cellOfText, quoted, readTable, type TableFault, type TableRow, tableFault } from './kitFile';

/** What could be read of a table, and what could not. */
export interface KitTable<Entry> {
  readonly entries: readonly Entry[];
  readonly faults: readonly TableFault[];
}

const BENDS = ['k1', 'k2', 'k3', 'p1', 'p2'] as const;
const NEEDED_NUMBERS = ['focalMm', 'squeeze', 'widestStop', 'narrowestStop', 'closeFocusMetres'] as const;
const OTHER_NUMBERS = [
  'longestMm',
  'imageCircleMm',
  'frontDiameterMm',
  'pupilToImageMm',
  'kilograms',
] as const;
const LENS_COLUMNS = ['set', 'label', ...NEEDED_NUMBERS, ...OTHER_NUMBERS, ...BENDS, 'source', 'id'] as const;
const MODE_COLUMNS = [
  'body',
  'mode',
  'gateWidthMm',
  'gateHeightMm',
  'circleMm',
  'source',
  'id',
  'modeId',
] as const;

type LensColumn = (typeof LENS_COLUMNS)[number];

const textCell = (text: string | undefined): CsvCell => (text === undefined ? null : cellOfText(text));

function lensCell(lens: Lens, column: LensColumn): CsvCell {
  switch (column) {
    case 'k1':
    case 'k2':
    case 'k3':
    case 'p1':
    case 'p2':
      return lens.distortion?.[column] ?? null;
    case 'set':
    case 'label':
    case 'source':
    case 'id':
      return textCell(lens[column]);
    default:
      return lens[column] ?? null;
  }
}

/** Lenses as comma-separated values, a row each, units in the names of the columns; text that a spreadsheet would run is guarded. */
export const lensesCsv = (lenses: readonly Lens[]): string =>
  csvOf([[...LENS_COLUMNS], ...lenses.map((lens) => LENS_COLUMNS.map((column) => lensCell(lens, column)))]);

/** Bodies as comma-separated values, a row for each gate mode. */
export const bodiesCsv = (bodies: readonly Body[]): string =>
  csvOf([
    [...MODE_COLUMNS],
    ...bodies.flatMap((body) =>
      body.modes.map((mode) => [
        textCell(body.label),
        textCell(mode.label),
        ...mode.gateMm,
        mode.circleMm ?? null,
        textCell(body.source),
        body.id,
        mode.id,
      ]),
    ),
  ]);

/** Reads the cells of one row and gathers what is wrong with them. */
class Row {
  readonly faults: TableFault[] = [];

  constructor(private readonly row: TableRow) {}

  text = (column: string): string | undefined => {
    const cell = this.row.cells.get(column) ?? '';
    return cell === '' ? undefined : cell;
  };

  number(column: string, [lowest, highest]: readonly [number, number], needed: boolean): number | undefined {
    const cell = this.text(column);
    if (cell === undefined && !needed) return undefined;
    const expected = `${lowest} to ${highest}`;
    const value = cell === undefined ? null : numberIn(cell);
    if (value !== null && value >= lowest && value <= highest) return value;
    this.fault(column, quoted(cell ?? ''), expected);
    return undefined;
  }

  fault(column: string, found: string, expected: string): void {
    this.faults.push(tableFault(this.row.line, column, found, expected));
  }
}

/** A plain number as machines write it (with an exponent too), or as people do. */
function numberIn(cell: string): number | null {
  const plain = /^\s*[-+]?\d/.test(cell) || /^\s*[-+]?\./.test(cell) ? Number(cell) : Number.NaN;
  return Number.isFinite(plain) ? plain : (readNumber(cell, [])?.value ?? null);
}

/** An id made of a name: letters, digits and hyphens, at most 40 of them. */
export function idFrom(name: string, taken: ReadonlySet<string>): string {
  const stem =
    name
      .normalize('NFKD')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+/, '')
      .slice(0, 34)
      .replace(/-+$/, '') || 'own';
  if (!taken.has(stem)) return stem;
  let number = 2;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}

/** Fields that are there; a field without a value is left out of a record. */
const present = <Fields extends object>(fields: Fields): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

const pathOf = (issue: v.BaseIssue<unknown>): string => String(issue.path?.at(-1)?.key ?? 'row');

/** Reads lenses, a row each. Rows with a fault are left out, and each fault names its line and column. */
export function readLensesCsv(text: string): KitTable<Lens> {
  const { rows, faults: first } = readTable(text, LENS_COLUMNS, ['label', ...NEEDED_NUMBERS]);
  const faults = [...first];
  const entries: Lens[] = [];
  const taken = new Set(rows.flatMap(({ cells }) => cells.get('id') || []));
  const seen = new Set<string>();
  for (const each of rows) {
    const row = new Row(each);
    const bends = BENDS.map((column) => [column, row.number(column, LENS_LIMITS[column], false)] as const);
    const isBent = bends.some(([, value]) => value !== undefined);
    const label = row.text('label');
    const id = row.text('id') ?? idFrom(label ?? '', taken);
    if (label === undefined) row.fault('label', 'nothing', 'a name');
    const fields = present({
      id,
      label: label ?? 'lens',
      set: row.text('set'),
      ...Object.fromEntries(NEEDED_NUMBERS.map((name) => [name, row.number(name, LENS_LIMITS[name], true)])),
      ...Object.fromEntries(OTHER_NUMBERS.map((name) => [name, row.number(name, LENS_LIMITS[name], false)])),
      distortion: isBent ? Object.fromEntries(bends.map(([name, value]) => [name, value ?? 0])) : undefined,
      source: row.text('source'),
    });
    if (seen.has(id)) row.fault('id', quoted(id), 'an id of its own');
    const parsed = v.safeParse(lensSchema, fields, { abortPipeEarly: true });
    if (!parsed.success && row.faults.length === 0)
      for (const issue of parsed.issues) row.fault(pathOf(issue), quoted(String(issue.input)), issue.message);
    if (parsed.success && parsed.output.narrowestStop < parsed.output.widestStop)
      row.fault(
        'narrowestStop',
        String(parsed.output.narrowestStop),
        `${parsed.output.widestStop} or more, the widest`,
      );
    faults.push(...row.faults);
    if (!parsed.success || row.faults.length > 0) continue;
    seen.add(id);
    taken.add(id);
    entries.push(parsed.output);
  }
  return { entries, faults };
}

/** Reads bodies, a row for each mode; rows of one id, or where there is none of one name, are one body. */
export function readBodiesCsv(text: string): KitTable<Body> {
  const { rows, faults: first } = readTable(text, MODE_COLUMNS, [
    'body',
    'mode',
    'gateWidthMm',
    'gateHeightMm',
  ]);
  const faults = [...first];
  const bodies = new Map<string, Body>();
  const ids = new Set(rows.flatMap(({ cells }) => cells.get('id') || []));
  const idsByName = new Map<string, string>();
  for (const each of rows) {
    const row = new Row(each);
    const label = row.text('body');
    const mode = row.text('mode');
    if (label === undefined) row.fault('body', 'nothing', 'a name');
    if (mode === undefined) row.fault('mode', 'nothing', 'a name');
    const id = row.text('id') ?? idsByName.get(label ?? '') ?? idFrom(label ?? '', ids);
    if (row.text('id') === undefined) idsByName.set(label ?? '', id);
    const before = bodies.get(id);
    const taken = new Set((before?.modes ?? []).map((known) => known.id));
    const modeId = row.text('modeId') ?? idFrom(mode ?? '', taken);
    if (taken.has(modeId)) row.fault('modeId', quoted(modeId), 'an id of its own');
    const fields = present({
      id,
      label: label ?? 'body',
      modes: [
        ...(before?.modes ?? []),
        present({
          id: modeId,
          label: mode ?? 'mode',
          gateMm: [
            row.number('gateWidthMm', MODE_LIMITS.gateMm, true),
            row.number('gateHeightMm', MODE_LIMITS.gateMm, true),
          ],
          circleMm: row.number('circleMm', MODE_LIMITS.circleMm, false),
        }),
      ],
      source: before ? before.source : row.text('source'),
    });
    const parsed = v.safeParse(bodySchema, fields, { abortPipeEarly: true });
    if (!parsed.success && row.faults.length === 0)
      for (const issue of parsed.issues) row.fault(pathOf(issue), quoted(String(issue.input)), issue.message);
    faults.push(...row.faults);
    if (!parsed.success || row.faults.length > 0) continue;
    ids.add(id);
    bodies.set(id, parsed.output);
  }
  return { entries: [...bodies.values()], faults };
}
