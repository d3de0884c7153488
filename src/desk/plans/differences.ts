import type { Plan } from '../../core/plan/schema/plan';
import { sameData } from '../../core/units/sameData';

/** How many came, went and changed. */
export interface Counts {
  readonly added: number;
  readonly removed: number;
  readonly changed: number;
}

/** In what two states of a plan differ. */
export interface Differences {
  /** Set pieces, cast and gear together. */
  readonly items: Counts;
  readonly setups: Counts;
  /** Whether anything else differs: title, place, ground, kit, beats, tapes, underlay. */
  readonly rest: boolean;
}

interface Named {
  readonly id: string;
}

function countsOf(before: readonly Named[], after: readonly Named[]): Counts {
  if (before === after) return { added: 0, removed: 0, changed: 0 };
  const old = new Map(before.map((record) => [record.id, record]));
  let [added, changed, kept] = [0, 0, 0];
  for (const record of after) {
    const was = old.get(record.id);
    if (!was) added += 1;
    else {
      kept += 1;
      if (!sameData(was, record)) changed += 1;
    }
  }
  return { added, removed: before.length - kept, changed };
}

function sum(counts: readonly Counts[]): Counts {
  return counts.reduce((all, each) => ({
    added: all.added + each.added,
    removed: all.removed + each.removed,
    changed: all.changed + each.changed,
  }));
}

/** Compares two states of a plan, record by record, by their ids. */
export function differencesOf(before: Plan, after: Plan): Differences {
  const { pieces, cast, gear, setups, ...rest } = before;
  const { pieces: piecesAfter, cast: castAfter, gear: gearAfter, setups: setupsAfter, ...restAfter } = after;
  return {
    items: sum([countsOf(pieces, piecesAfter), countsOf(cast, castAfter), countsOf(gear, gearAfter)]),
    setups: countsOf(setups, setupsAfter),
    rest: !sameData(rest, restAfter),
  };
}

const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** `2 items added`, then `1 taken out`: the word stands once. */
function countWords({ added, removed, changed }: Counts, word: string): string[] {
  const parts: readonly (readonly [number, string])[] = [
    [added, 'added'],
    [removed, 'taken out'],
    [changed, 'changed'],
  ];
  return parts
    .filter(([count]) => count > 0)
    .map(([count, verb], index) => `${index === 0 ? plural(count, word) : count} ${verb}`);
}

/** The differences in one sentence, as from the older state to the newer. */
export function differenceSentence({ items, setups, rest }: Differences): string {
  const parts = [...countWords(items, 'item'), ...countWords(setups, 'setup')];
  if (rest) parts.push(parts.length > 0 ? 'and details of the night' : 'Details of the night changed');
  return parts.length > 0 ? `${parts.join(', ')}.` : 'Nothing differs.';
}
