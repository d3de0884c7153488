import { PALETTE_GROUPS, type PaletteEntry, type PaletteGroup } from '../../../core/kit/palette';
import { matches, wordsOf } from '../list/rows';

/** Entries under the heading of their group. */
export interface EntryGroup {
  readonly group: PaletteGroup;
  readonly entries: readonly PaletteEntry[];
}

/** A heading as what it holds: `Lamps without a stand` are lamps, and no stands. */
const headingWord = (group: PaletteGroup): string => group.replace(/ without .*/, '');

/**
 * What a search finds of the palette, by its own words and by others that it goes by, in the palette's own order.
 * `besides` says of a group whether something else in it is found, so that its heading stands.
 */
export function findEntries(
  palette: readonly PaletteEntry[],
  search: string,
  besides: (group: PaletteGroup, words: readonly string[]) => boolean = () => false,
): readonly EntryGroup[] {
  const words = wordsOf(search);
  return PALETTE_GROUPS.flatMap((group): EntryGroup[] => {
    const entries = palette.filter(
      (entry) =>
        entry.group === group && matches(words, [entry.word, entry.kind, headingWord(group), ...entry.also]),
    );
    return entries.length === 0 && !besides(group, words) ? [] : [{ group, entries }];
  });
}

/** The word as it stands in a row of words: `mesh fence`, but `LED street lamp`. */
export const inARow = (word: string): string =>
  /^[A-Z][a-z]/.test(word) ? word.charAt(0).toLowerCase() + word.slice(1) : word;
