import { itemOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import type { ItemReport, Span } from '../../core/report/types';
import { formatLength } from '../../core/units/lengths';
import { formatSeconds } from '../../core/units/seconds';
import { formatShare } from '../../core/units/shares';
import { plainText } from '../plainText';

const SPANS_SHOWN = 2;

/** When an item is seen, in words: nothing at one instant, `throughout` for the whole span, else the first spans. */
export function whenOf(spans: readonly Span[], [from, to]: Span): string {
  if (from === to || spans.length === 0) return '';
  if (spans.length === 1 && spans[0][0] <= from && spans[0][1] >= to) return 'throughout';
  const shown = spans.slice(0, SPANS_SHOWN).map(([start, end]) => {
    return start === end ? `at ${formatSeconds(start)}` : `${formatSeconds(start)} to ${formatSeconds(end)}`;
  });
  const rest = spans.length - shown.length;
  return shown.join(', ') + (rest > 0 ? `, ${rest} more` : '');
}

/** What a person needs besides: the coverer, the margin, the move that would take it out, the layer in front of it. */
export function noteOf(item: ItemReport, plan: Plan): string {
  const nameOf = (id: string): string => plainText(itemOf(plan, id)?.record.label ?? id);
  if (item.verdict === 'close') {
    const { margin } = item;
    if (!margin) return '';
    return `${formatLength(margin.metres, 'm')}, ${formatShare(margin.frameWidths)} of the width beyond frame ${margin.edge}`;
  }
  if (item.verdict === 'covered')
    return item.coveredBy.length > 0 ? `behind ${nameOf(item.coveredBy[0].id)}` : '';
  const notes: string[] = [];
  if (item.wish === 'keep out' && item.moveOutMetres !== null) {
    const side = item.moveOutMetres < 0 ? 'left' : 'right';
    notes.push(`${formatLength(Math.abs(item.moveOutMetres), 'm')} ${side} takes it out`);
  }
  const [layer] = item.through;
  if (layer && layer.share > item.share / 2) notes.push(`through ${nameOf(layer.id)}`);
  if (item.verdict === 'showing' && item.mirroredShare > 0) notes.push('mirrored too');
  return notes.join(', ');
}
