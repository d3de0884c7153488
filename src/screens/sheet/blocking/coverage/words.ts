import type { CoverageCell, CoverageInterval } from '../../../../core/continuity/coverage';
import type { Plan } from '../../../../core/plan/schema/plan';
import { namesOf } from '../../../../core/report/continuity/names';
import { formatSeconds } from '../../../../core/units/seconds';
import { formatShare } from '../../../../core/units/shares';
import { letterOf } from '../../../../desk/choose';
import type { Bar, ChartRow } from './chart';

/** Who a row is about: `Vera`, or `Nuno and Vera` for two together. */
export const rowName = (plan: Plan, { performerIds }: Pick<ChartRow, 'performerIds'>): string =>
  namesOf(plan, performerIds);

export const beatName = (plan: Plan, beatId: string): string =>
  plan.beats.find(({ id }) => id === beatId)?.label ?? beatId;

const span = ({ fromSeconds, toSeconds }: Pick<CoverageInterval, 'fromSeconds' | 'toSeconds'>): string =>
  `${formatSeconds(fromSeconds)} to ${formatSeconds(toSeconds)}`;

/** `E medium close-up, Vera, 18.0 s to 26.0 s`: what is lettered on the bar comes first. */
export function barWords(plan: Plan, row: ChartRow, bar: Bar): string {
  const part = bar.whole ? '' : ', in part';
  return `${letterOf(plan, bar.setupId)} ${bar.size}, ${rowName(plan, row)}, ${span(bar)}${part}`;
}

/** `No setup for Vera, 0.0 s to 5.0 s`. */
export const holeWords = (plan: Plan, row: ChartRow, hole: ChartRow['holes'][number]): string =>
  `No setup for ${rowName(plan, row)}, ${span(hole)}`;

/** What a cell says where the chart is read out: `A, mid shot; B, close-up for 40 %`; `no setup`, or that they rest. */
export function cellWords(plan: Plan, cell: CoverageCell, together: boolean): string {
  if (cell.setups.length === 0)
    return together ? 'not together' : cell.isInPlay ? 'no setup' : 'nothing happens';
  return cell.setups
    .map(({ setupId, size, share }) => {
      const part = share < 0.995 ? ` for ${formatShare(share)}` : '';
      return `${letterOf(plan, setupId)}, ${size}${part}`;
    })
    .join('; ');
}
