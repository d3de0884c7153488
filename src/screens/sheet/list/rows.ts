import { type Item, kindOf } from '../../../core/plan/items';

/** What is moved most comes first. */
const ORDER: readonly Item['section'][] = ['gear', 'cast', 'piece'];

/** The items in the order of the list: gear, cast, set pieces. */
export const inListOrder = (items: readonly Item[]): readonly Item[] =>
  ORDER.flatMap((section) => items.filter((item) => item.section === section));

/** The words of a search, lower case; none for an empty one. */
export const wordsOf = (search: string): readonly string[] =>
  search
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');

const NUMBER = /^\d+$/;

/** Whether each word of a search is somewhere in one of the texts; a number only as a number of its own, 2 not in 200. */
export const matches = (words: readonly string[], texts: readonly string[]): boolean =>
  words.every((word) =>
    texts.some((text) =>
      NUMBER.test(word) ? text.split(/\D+/).includes(word) : text.toLowerCase().includes(word),
    ),
  );

/** The items that a search finds by name or kind, `hidden` and `locked` included. */
export function foundItems(items: readonly Item[], search: string): readonly Item[] {
  const words = wordsOf(search);
  if (words.length === 0) return items;
  return items.filter((item) => {
    const { label, hidden, locked } = item.record;
    return matches(words, [
      label,
      kindOf(item),
      ...(hidden ? ['hidden'] : []),
      ...(locked ? ['locked'] : []),
    ]);
  });
}

/** All ids from one row to another, in the order of the list, whichever is above; the one alone where the other is not listed. */
export function idsBetween(ids: readonly string[], from: string | null, to: string): readonly string[] {
  const start = from === null ? -1 : ids.indexOf(from);
  const end = ids.indexOf(to);
  if (start < 0 || end < 0) return [to];
  const range = ids.slice(Math.min(start, end), Math.max(start, end) + 1);
  // The one that was pressed is chosen last: panels speak of it.
  return start <= end ? range : range.toReversed();
}
