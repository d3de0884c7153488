import type { ContinuityEntry, ItemReport, Report, SetupReport, Span } from '../core/report/types';
import { type CsvCell, cleanCell, csvOf } from './csv';
import { CAUTION_COLUMNS, cautionRecord } from './reportCsvCautions';
import { type CsvRecord, LIGHT_COLUMNS, lightRecords } from './reportCsvLight';

interface Share {
  readonly share: number;
}

const spanList = (spans: readonly Span[]): string => spans.map(([from, to]) => `${from} to ${to}`).join('; ');
const partList = (parts: readonly (Share & { readonly name: string })[]): string =>
  parts.map(({ name, share }) => `${name} ${share}`).join('; ');
const itemList = (items: readonly (Share & { readonly id: string })[]): string =>
  items.map(({ id, share }) => `${id} ${share}`).join('; ');

type Column = readonly [name: string, cell: (setup: SetupReport, item: ItemReport) => CsvCell];

/** The columns, in their order; new ones go to the end, so that what reads the file goes on working. */
const COLUMNS: readonly Column[] = [
  ['setup', (setup) => setup.id],
  ['setupLabel', (setup) => setup.label],
  ['fromSeconds', (setup) => setup.seconds[0]],
  ['toSeconds', (setup) => setup.seconds[1]],
  ['item', (_, item) => item.id],
  ['label', (_, item) => item.label],
  ['kind', (_, item) => item.kind],
  ['wish', (_, item) => item.wish],
  ['verdict', (_, item) => item.verdict],
  ['share', (_, item) => item.share],
  ['spans', (_, item) => spanList(item.spans)],
  ['parts', (_, item) => partList(item.parts)],
  ['coveredBy', (_, item) => itemList(item.coveredBy)],
  ['through', (_, item) => itemList(item.through)],
  ['mirroredShare', (_, item) => item.mirroredShare],
  ['mirroredSpans', (_, item) => spanList(item.mirroredSpans)],
  ['mirroredParts', (_, item) => partList(item.mirroredParts)],
  ['marginMetres', (_, item) => item.margin?.metres ?? null],
  ['marginFrameWidths', (_, item) => item.margin?.frameWidths ?? null],
  ['marginEdge', (_, item) => item.margin?.edge ?? null],
  ['left', (_, item) => item.extent?.[0] ?? null],
  ['top', (_, item) => item.extent?.[1] ?? null],
  ['right', (_, item) => item.extent?.[2] ?? null],
  ['bottom', (_, item) => item.extent?.[3] ?? null],
  ['mirroredLeft', (_, item) => item.mirroredExtent?.[0] ?? null],
  ['mirroredTop', (_, item) => item.mirroredExtent?.[1] ?? null],
  ['mirroredRight', (_, item) => item.mirroredExtent?.[2] ?? null],
  ['mirroredBottom', (_, item) => item.mirroredExtent?.[3] ?? null],
  ['moveOutMetres', (_, item) => item.moveOutMetres],
  ['worstAtSeconds', (_, item) => item.worstAtSeconds],
];

type ContinuityColumn = readonly [
  name: string,
  cell: (setup: SetupReport, entry: ContinuityEntry) => CsvCell,
];

/** The columns that findings of continuity fill of those of the items. */
const SHARED: Readonly<Record<string, ContinuityColumn[1]>> = {
  setup: (setup) => setup.id,
  setupLabel: (setup) => setup.label,
  fromSeconds: (setup) => setup.seconds[0],
  toSeconds: (setup) => setup.seconds[1],
  kind: () => 'continuity',
};

/** And those that they have for themselves, behind them. */
const CONTINUITY_COLUMNS: readonly ContinuityColumn[] = [
  ['continuity', (_, entry) => entry.kind],
  ['standing', (_, entry) => entry.standing],
  ['againstSetup', (_, entry) => entry.againstId],
  ['performers', (_, entry) => entry.performerIds.join('; ')],
  ['atSeconds', (_, entry) => entry.atSeconds],
  ['sentence', (_, entry) => entry.sentence],
];

/** All columns in their order. */
const NAMES: readonly string[] = [
  ...COLUMNS.map(([name]) => name),
  ...CONTINUITY_COLUMNS.map(([name]) => name),
  ...LIGHT_COLUMNS,
  ...CAUTION_COLUMNS,
];

const lightRecord = (setup: SetupReport, record: CsvRecord): CsvRecord => ({
  setup: setup.id,
  setupLabel: setup.label,
  fromSeconds: setup.seconds[0],
  toSeconds: setup.seconds[1],
  kind: 'light',
  ...record,
});

/**
 * A report as comma-separated values: a line of names, then one line for each item in each setup, then one for each
 * finding of continuity, which has no item and the kind `continuity`, then those of light, with the kind `light` and in
 * `light` what each is of, then the cautions of the whole plan, with the kind `caution` and no setup. Seconds, metres,
 * lux, stops, shares of the frame from 0 to 1, none of them rounded. `clean` is applied to every name out of the plan.
 */
export function reportCsv(report: Report, clean: (text: string) => string = (text) => text): string {
  const tidy = cleanCell(clean);
  const rest = [...LIGHT_COLUMNS, ...CAUTION_COLUMNS].map(() => null);
  return csvOf([
    NAMES,
    ...report.setups.flatMap((setup) =>
      setup.items.map((item) => [
        ...COLUMNS.map(([, cell]) => tidy(cell(setup, item))),
        ...CONTINUITY_COLUMNS.map(() => null),
        ...rest,
      ]),
    ),
    ...report.setups.flatMap((setup) =>
      setup.continuity.map((entry) => [
        ...COLUMNS.map(([name]) => tidy(SHARED[name]?.(setup, entry) ?? null)),
        ...CONTINUITY_COLUMNS.map(([, cell]) => tidy(cell(setup, entry))),
        ...rest,
      ]),
    ),
    ...report.setups.flatMap((setup) =>
      lightRecords(setup).map((record) => {
        const cells = lightRecord(setup, record);
        return NAMES.map((name) => tidy(cells[name] ?? null));
      }),
    ),
    ...report.cautions.map((caution) => {
      const cells = cautionRecord(caution);
      return NAMES.map((name) => tidy(cells[name] ?? null));
    }),
  ]);
}
