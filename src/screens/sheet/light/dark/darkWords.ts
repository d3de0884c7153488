import {
  DARK,
  type DarkThresholds,
  type DarkVerdict,
  type ItemReads,
  type PartReads,
  type Reads,
} from '../../../../core/light/readsInTheDark';
import { itemOf, wishOf } from '../../../../core/plan/items';
import type { Plan, UprightLimits } from '../../../../core/plan/schema/plan';
import { formatNumber, formatSigned } from '../../../../core/units/numbers';
import { formatShare } from '../../../../core/units/shares';
import { formatStopCount } from '../../../../core/units/stops';

const ORDER: readonly DarkVerdict[] = ['reads', 'passes for an upright', 'lost in the dark'];

/** What should keep out before what may show, what stands out first, what is lost last; otherwise as the report has it. */
export function inOrder(plan: Plan, reads: readonly ItemReads[]): readonly ItemReads[] {
  const mayShow = ({ itemId }: ItemReads): number => {
    const item = itemOf(plan, itemId);
    return item && wishOf(item) === 'keep out' ? 0 : 1;
  };
  return reads.toSorted(
    (a, b) => mayShow(a) - mayShow(b) || ORDER.indexOf(a.verdict) - ORDER.indexOf(b.verdict),
  );
}

const lostOr = ({ isLost, contrastStops }: Reads): string =>
  isLost ? 'lost' : formatSigned(contrastStops, 1);

/** A part's line: its share, how far it is from grey, its contrast as it is, blacked and flagged. */
export const partCells = (part: PartReads): readonly string[] => [
  formatShare(part.share),
  formatSigned(-part.stopsUnder, 1),
  lostOr(part),
  lostOr(part.blacked),
  part.flagged ? lostOr(part.flagged) : '',
];

/** `1.05 to 1`: a contrast in stops as a ratio. */
export const contrastText = (contrastStops: number): string => `${formatNumber(2 ** contrastStops, 2)} to 1`;

/** What the thresholds mean, with where they come from. */
export function thresholdWords({ contrastStops, stopsUnder }: Omit<DarkThresholds, 'uprights'>): string {
  return (
    `Lost is what is less than ${contrastText(contrastStops)} from what is behind it (just noticed is ${contrastText(DARK.contrastStops)}), ` +
    `and what lies with it ${formatNumber(stopsUnder, 1)} stops under grey (zone I, ${DARK.stopsUnder} under, is tone without texture).`
  );
}

/** What the limits of an upright mean, and where they are from. */
export function uprightWords({ likeWidth, likeStops, among }: UprightLimits): string {
  const others = among === 1 ? 'one other' : `${among} others`;
  return (
    `A part that stands upright beside ${others} of the set, within ${formatNumber(likeWidth, 2)} to 1 in width and ` +
    `${formatStopCount(likeStops)} in brightness, is taken for one of them. These are estimates of ours: no source has them.`
  );
}
