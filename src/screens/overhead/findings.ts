import { itemOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import type { ItemReport, SetupReport, Verdict } from '../../core/report/types';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import { formatShare } from '../../core/units/shares';
import { type Concern, concernOf, findingsOf as concernsOf } from '../report/concerns';
import { distance, type Spot } from './geometry/spots';
import { drawnName } from './words';

/** Something to be marked on the sheet: which items, where, and two lines of words. */
export interface Finding {
  readonly id: string;
  readonly items: readonly string[];
  readonly concern: Concern;
  readonly glyph: Verdict;
  /** Middle of the ring, metres. */
  readonly at: Spot;
  readonly words: string;
  readonly detail: string;
}

/**
 * What of a setup's report is marked on the roof, worst first. What stands in one place for one reason is one finding:
 * a stand, the lamp on it and its sandbag get one ring.
 */
export function findingsOnRoof(
  report: SetupReport,
  plan: Plan,
  placeOf: (itemId: string) => Spot | null,
  lengths: LengthSystem,
  samePlaceMetres: number,
): Finding[] {
  const found: { reports: ItemReport[]; concern: Concern; at: Spot }[] = [];
  for (const item of concernsOf(report)) {
    const concern = concernOf(item);
    const at = itemOf(plan, item.id) ? placeOf(item.id) : null;
    if (!concern || !at) continue;
    const same = found.find((other) => distance(other.at, at) < samePlaceMetres);
    // Of one place the worst is told; what is less there is in the list beside the picture.
    if (!same) found.push({ reports: [item], concern, at });
    else if (same.concern === concern) same.reports.push(item);
  }
  return found.map(({ reports, concern, at }) => ({
    id: `${concern}:${reports[0].id}`,
    items: reports.map(({ id }) => id),
    concern,
    glyph: concern === 'missing' ? reports[0].verdict : concern === 'shows' ? 'showing' : concern,
    at,
    words: wordsOf(reports, concern),
    detail: detailOf(reports[0], concern, lengths),
  }));
}

const VERBS: Readonly<Record<Concern, readonly [string, string]>> = {
  shows: ['shows', 'show'],
  missing: ['is missing', 'are missing'],
  mirrored: ['is mirrored', 'are mirrored'],
  close: ['is close', 'are close'],
};

function wordsOf(reports: readonly ItemReport[], concern: Concern): string {
  const [first] = reports;
  const [one, more] = VERBS[concern];
  const name = drawnName(first.label);
  if (reports.length === 1) return `${name} ${one}`;
  return `${name} and ${reports.length - 1} more ${more}`;
}

const OUTSIDE = {
  left: 'outside frame left',
  right: 'outside frame right',
  top: 'above the frame',
  bottom: 'below the frame',
} as const;

function detailOf(item: ItemReport, concern: Concern, lengths: LengthSystem): string {
  if (concern === 'close' && item.margin)
    return `${formatLength(item.margin.metres, lengths)} ${OUTSIDE[item.margin.edge]}`;
  if (item.verdict === 'lost in the dark') return item.verdict;
  const share = concern === 'mirrored' ? item.mirroredShare : item.share;
  return share > 0 ? `${formatShare(share)} of the frame` : '';
}
