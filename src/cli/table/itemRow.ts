import type { Plan } from '../../core/plan/schema/plan';
import { type ItemReport, type SetupReport, VERDICTS } from '../../core/report/types';
import { formatShare } from '../../core/units/shares';
import { plainText } from '../plainText';
import type { ColumnRule } from './columns';
import { noteOf, whenOf } from './itemWords';
import { intrudes } from './wishes';

/** Stands before what should keep out and can be seen. */
export const MARK = '×';

/** Mark, verdict, share, item, part, when, note: how each column is set. */
export const ITEM_COLUMNS: readonly ColumnRule[] = [
  {},
  {},
  { side: 'right' },
  { leastWidth: 12 },
  { leastWidth: 8, spare: true },
  { leastWidth: 10, spare: true },
  { leastWidth: 10, spare: true },
];
/** What stands above them. */
export const ITEM_COLUMN_NAMES = ['', 'verdict', 'share', 'item', 'part', 'when', 'note'];

/** What can be seen of an item at its largest, in the lens, or else in a reflecting surface; 0..1 of the frame. */
export const seenShare = (item: ItemReport): number =>
  item.verdict === 'mirrored' ? item.mirroredShare : item.share;

/** What breaks a wish first, then by verdict, then by how much of the frame it takes. */
export function byWorst(a: ItemReport, b: ItemReport): number {
  return (
    Number(intrudes(b)) - Number(intrudes(a)) ||
    VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) ||
    seenShare(b) - seenShare(a)
  );
}

/** The cells of an item's row. */
export function itemRow(item: ItemReport, setup: SetupReport, plan: Plan): string[] {
  const mirrored = item.verdict === 'mirrored';
  const share = seenShare(item);
  return [
    intrudes(item) ? MARK : '',
    item.verdict,
    share > 0 ? formatShare(share) : '',
    plainText(item.label),
    partWords(mirrored ? item.mirroredParts : item.parts),
    whenOf(mirrored ? item.mirroredSpans : item.spans, setup.seconds),
    noteOf(item, plan),
  ];
}

/** The largest part, and how many more there are. */
function partWords(parts: ItemReport['parts']): string {
  if (parts.length === 0) return '';
  const largest = parts.reduce((most, part) => (part.share > most.share ? part : most));
  return plainText(parts.length === 1 ? largest.name : `${largest.name}, ${parts.length - 1} more`);
}
