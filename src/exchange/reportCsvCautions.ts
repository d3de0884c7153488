import type { Caution, Figure } from '../core/cautions/types';
import type { CsvRecord } from './reportCsvLight';

/** The columns of cautions, behind all others. */
export const CAUTION_COLUMNS = [
  'caution',
  'cautionKind',
  'cautionItems',
  'cautionSetups',
  'roofX',
  'roofY',
  'roofZ',
  'figures',
  'sources',
  'decides',
  'note',
] as const;

const figureText = ({ name, value, unit, expected }: Figure): string =>
  `${name} ${value} ${unit}${expected === undefined ? '' : ` (${expected})`}`;

/** A caution as a row: its figures with what each is held against in brackets, metres on the roof, none of them rounded. */
export const cautionRecord = (caution: Caution): CsvRecord => ({
  kind: 'caution',
  standing: caution.standing,
  sentence: caution.sentence,
  caution: caution.id,
  cautionKind: caution.kind,
  cautionItems: caution.itemIds.join('; '),
  cautionSetups: caution.setupIds.join('; '),
  roofX: caution.place?.[0] ?? null,
  roofY: caution.place?.[1] ?? null,
  roofZ: caution.place?.[2] ?? null,
  figures: caution.figures.map(figureText).join('; '),
  sources: caution.sources.join('; '),
  decides: caution.decides,
  note: caution.note ?? null,
});
