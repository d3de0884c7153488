import type { ItemReport, SetupReport, Verdict } from '../../core/report/types';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import { type Concern, concernOf } from './concerns';

/** A setup's verdict in a few words, with its glyph. */
export interface Summary {
  readonly verdict: Verdict;
  readonly words: string;
}

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

/** What the strip says of a setup: `1 shows, 1 mirrored`, `bounce 1, 0.18 m`, `1 covered`, `clear`. */
export function summaryOf(setup: SetupReport, lengths: LengthSystem): Summary {
  const troubled = new Map<Concern, ItemReport[]>();
  for (const item of setup.items) {
    const concern = concernOf(item);
    if (concern) troubled.set(concern, [...(troubled.get(concern) ?? []), item]);
  }
  const concerns = (['shows', 'missing', 'mirrored', 'close'] as const).filter((name) => troubled.has(name));
  const worst = concerns[0];
  if (worst) {
    const items = troubled.get(worst) ?? [];
    const sole = concerns.length === 1 && items.length === 1 ? items[0] : undefined;
    if (sole) return { verdict: GLYPH[worst], words: soleWords(worst, sole, lengths) };
    // What is close hardly matters beside what shows, and the card has room for two facts.
    const told = concerns.filter((name) => name !== 'close' || worst === 'close').slice(0, 2);
    return {
      verdict: GLYPH[worst],
      words: told.map((name) => countWords(name, troubled.get(name)?.length ?? 0)).join(', '),
    };
  }
  const covered = setup.items.filter((item) => item.wish === 'keep out' && item.verdict === 'covered');
  return covered.length > 0
    ? { verdict: 'covered', words: `${covered.length} covered` }
    : { verdict: 'clear', words: 'clear' };
}

/** The worst verdict that an item has in any setup, by what should be done about it; null before any is known. */
export function worstOver(setups: readonly SetupReport[], itemId: string): ItemReport | null {
  const order: readonly (Concern | null)[] = ['shows', 'missing', 'mirrored', 'close', null];
  const plain: readonly Verdict[] = ['showing', 'mirrored', 'covered', 'close', 'clear'];
  const found = setups.flatMap((setup) => setup.items.find((item) => item.id === itemId) ?? []);
  return (
    found.toSorted(
      (a, b) =>
        order.indexOf(concernOf(a)) - order.indexOf(concernOf(b)) ||
        plain.indexOf(a.verdict) - plain.indexOf(b.verdict),
    )[0] ?? null
  );
}
