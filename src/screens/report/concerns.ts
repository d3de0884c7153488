import { isSeen } from '../../core/report/seen';
import type { ItemReport, SetupReport, Verdict } from '../../core/report/types';
import { VERDICTS } from '../../core/report/types';

/**
 * What a verdict means for somebody who has to act: an item that should keep out shows, is mirrored or is close;
 * one that must show is missing; null when there is nothing to do, as where somebody let it show.
 */
export type Concern = 'shows' | 'missing' | 'mirrored' | 'close';

const ORDER: readonly Concern[] = ['shows', 'missing', 'mirrored', 'close'];

export const concernOf = (item: ItemReport): Concern | null =>
  item.wish === 'keep out' && item.accepted ? null : concernByVerdict(item);

/** The same whether somebody let it show or not. */
export function concernByVerdict(item: ItemReport): Concern | null {
  if (item.wish === 'must show') return item.verdict === 'showing' ? null : 'missing';
  if (item.wish === 'either') return null;
  if (item.verdict === 'showing') return 'shows';
  return item.verdict === 'mirrored' || item.verdict === 'close' ? item.verdict : null;
}

/** Whether an item is in frame against its wish, as it is lit now or in any light: then there are ways to be rid of it. */
export const isInTheWay = ({ wish, verdict }: ItemReport): boolean => wish === 'keep out' && isSeen(verdict);

/** Whether an item is in frame against its wish, and may be. */
export const isLetShow = (item: ItemReport): boolean => isInTheWay(item) && item.accepted !== undefined;

/** How much of it: the larger comes first within a concern; for what is close, the nearer. */
function weight(item: ItemReport): number {
  if (item.verdict === 'close') return -(item.margin?.frameWidths ?? 0);
  return Math.max(item.share, item.mirroredShare);
}

/** A setup's items that ask for something, worst first. */
export function findingsOf(setup: SetupReport): readonly ItemReport[] {
  const rank = (item: ItemReport): number => ORDER.indexOf(concernOf(item) ?? 'close');
  return setup.items
    .filter((item) => concernOf(item) !== null)
    .toSorted((a, b) => rank(a) - rank(b) || weight(b) - weight(a));
}

/** The other items: those that should keep out first, by verdict, then what may show. */
export function restOf(setup: SetupReport): readonly ItemReport[] {
  const keepsOut = (item: ItemReport): number => (item.wish === 'keep out' ? 0 : 1);
  return setup.items
    .filter((item) => concernOf(item) === null)
    .toSorted(
      (a, b) => keepsOut(a) - keepsOut(b) || VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict),
    );
}

/**
 * How many of the items that should keep out have each verdict; verdicts that none has are left out, and those that
 * somebody let show: `isLetShow` finds them.
 */
export function tallyOf(
  setup: SetupReport,
): readonly { readonly verdict: Verdict; readonly count: number }[] {
  const keepOut = setup.items.filter((item) => item.wish === 'keep out' && !isLetShow(item));
  return (['showing', 'mirrored', 'close', 'lost in the dark', 'covered', 'clear'] as const)
    .map((verdict) => ({ verdict, count: keepOut.filter((item) => item.verdict === verdict).length }))
    .filter(({ count }) => count > 0);
}

/** The glyph's colour for an item: what may show is no trouble when it does. */
export function toneOf(item: ItemReport): string | undefined {
  if (item.wish === 'must show') return item.verdict === 'showing' ? 'verd' : 'verm';
  return item.wish === 'either' || isLetShow(item) ? 'q' : undefined;
}
