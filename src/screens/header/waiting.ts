import type { Caution } from '../../core/cautions/types';
import { isUnnoted } from '../../desk/cautions/cautionsStore';
import { several } from '../sheet/night/cautions/words';

/** How many wait for a note, in a word for the line along the top. */
export function unnotedWords(
  cautions: readonly Caution[],
  noted: ReadonlySet<string>,
): { readonly count: number; readonly breaks: boolean; readonly spoken: string } {
  const waiting = cautions.filter((caution) => isUnnoted(caution, noted));
  const breaks = waiting.filter(({ standing }) => standing === 'breaks').length;
  const count = waiting.length;
  const spoken = `without a note, of which ${several(breaks, 'breaks', 'break')} a figure`;
  return { count, breaks: breaks > 0, spoken };
}
