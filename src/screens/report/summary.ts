import { type ItemReport, type SetupReport, VERDICTS, type Verdict } from '../../core/report/types';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import { type Concern, concernOf, isLetShow } from './concerns';

/** A setup's verdict in a few words, with its glyph. */
export interface Summary {
  readonly verdict: Verdict;
  readonly words: string;
  /** Of the glyph, where the verdict is no trouble. */
  readonly tone?: string;
}

const CONCERNS: readonly Concern[] = ['shows', 'missing', 'mirrored', 'close'];
const PLAIN: readonly Verdict[] = VERDICTS;

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const GLYPH: Readonly<Record<Concern, Verdict>> = {
  shows: 'showing',
  missing: 'covered',
  mirrored: 'mirrored',
  close: 'close',
};

function countWords(concern: Concern, count: number): string {
  if (concern === 'shows') return count === 1 ? '1 shows' : `${count} show`;
  return `${count} ${concern}`;
}

function soleWords(concern: Concern, item: ItemReport, lengths: LengthSystem): string {
  const name = lowerFirst(item.label);
  if (concern === 'close' && item.margin) return `${name}, ${formatLength(item.margin.metres, lengths)}`;
  return concern === 'shows' ? `${name} shows` : `${name}, ${concern}`;
}

/** What the strip says of a setup: `1 shows, 1 mirrored`, `bounce 1, 0.18 m`, `1 let show`, `1 covered`, `clear`. */
export function summaryOf(setup: SetupReport, lengths: LengthSystem): Summary {
  const troubled = new Map<Concern, ItemReport[]>();
  for (const item of setup.items) {
    const concern = concernOf(item);
    if (concern) troubled.set(concern, [...(troubled.get(concern) ?? []), item]);
  }
  const { length: letShow } = setup.items.filter(isLetShow);
  const concerns = CONCERNS.filter((name) => troubled.has(name));
  const worst = concerns[0];
  if (worst) {
    const items = troubled.get(worst) ?? [];
    const sole = concerns.length === 1 && items.length === 1 ? items[0] : undefined;
    if (sole && letShow === 0) return { verdict: GLYPH[worst], words: soleWords(worst, sole, lengths) };
    // What is close hardly matters beside what shows, and the card has room for two facts.
    const told = concerns.filter((name) => name !== 'close' || worst === 'close').slice(0, 2);
    const counts = told.map((name) => countWords(name, troubled.get(name)?.length ?? 0));
    const more = letShow > 0 ? [`${letShow} let show`] : [];
    return { verdict: GLYPH[worst], words: [...counts, ...more].slice(0, 2).join(', ') };
  }
  if (letShow > 0) return { verdict: 'showing', words: `${letShow} let show`, tone: 'q' };
  for (const verdict of ['lost in the dark', 'covered'] as const) {
    const { length } = setup.items.filter((item) => item.wish === 'keep out' && item.verdict === verdict);
    if (length > 0) return { verdict, words: `${length} ${verdict}` };
  }
  return { verdict: 'clear', words: 'clear' };
}

/** How bad an item's report is: what should be done about it counts before the verdict itself. */
function badness(item: ItemReport): number {
  const concern = concernOf(item);
  const place = concern === null ? CONCERNS.length : CONCERNS.indexOf(concern);
  return -(place * 10 + PLAIN.indexOf(item.verdict));
}

/** Of each item, by id, the worst report that any setup has of it, and the setups where it asks for something. */
export function worstByItem(
  setups: readonly SetupReport[],
): ReadonlyMap<string, { readonly worst: ItemReport; readonly troubledIds: readonly string[] }> {
  const found = new Map<string, { worst: ItemReport; troubledIds: string[] }>();
  for (const setup of setups) {
    for (const item of setup.items) {
      const known = found.get(item.id);
      const troubled = concernOf(item) === null ? [] : [setup.id];
      if (!known) found.set(item.id, { worst: item, troubledIds: troubled });
      else {
        known.troubledIds.push(...troubled);
        if (badness(item) > badness(known.worst)) known.worst = item;
      }
    }
  }
  return found;
}
