import type { ItemReport } from '../../core/report/types';
import { formatShare } from '../../core/units/shares';
import { plainText } from '../plainText';
import { byWorst, seenShare } from './itemRow';
import { textWidth } from './textWidth';

/** A list of names reads well up to here, however wide the terminal is. */
const WIDEST_LIST = 110;

/** Whether an item gets a row of its own: what has a wish, and the cast, unless it is clear of the frame. */
export function hasRow({ verdict, wish, kind }: ItemReport): boolean {
  return verdict !== 'clear' && (wish !== 'either' || kind === 'performer');
}

/** One line for what may be in frame and is, and one that counts all the others. */
export function restLines(items: readonly ItemReport[], width: number): string[] {
  const rest = items.filter((item) => !hasRow(item));
  const inFrame = rest.filter(({ verdict }) => verdict === 'showing' || verdict === 'mirrored').sort(byWorst);
  const counts = (['clear', 'lost in the dark', 'covered', 'close'] as const)
    .map((verdict) => ({ verdict, count: rest.filter((item) => item.verdict === verdict).length }))
    .filter(({ count }) => count > 0)
    .map(({ verdict, count }) => `${count} ${verdict}`);
  return [
    ...(inFrame.length > 0
      ? [listWithin('also in frame: ', inFrame.map(nameAndShare), Math.min(width, WIDEST_LIST))]
      : []),
    ...(counts.length > 0 ? [`the rest: ${counts.join(', ')}`] : []),
  ];
}

function nameAndShare(item: ItemReport): string {
  const mirrored = item.verdict === 'mirrored' ? ' mirrored' : '';
  return `${plainText(item.label)} ${formatShare(seenShare(item))}${mirrored}`;
}

/** As many of the words as fit, at least one, and how many more there are. */
function listWithin(start: string, words: readonly string[], width: number): string {
  const lineOf = (count: number): string => {
    const more = words.length - count;
    return start + words.slice(0, count).join(', ') + (more > 0 ? `, ${more} more` : '');
  };
  let count = words.length;
  while (count > 1 && textWidth(lineOf(count)) > width) count -= 1;
  return lineOf(count);
}
