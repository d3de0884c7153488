import { type Item, kindOf, nameOf } from '../../core/plan/items';
import type { ItemReport } from '../../core/report/types';
import { lettersOf } from '../../desk/letters';
import { isLetShow } from '../report/concerns';

/** A name within a drawing or a sentence: small at the front, unless it begins with a short name in capitals. */
export function nameInText(label: string): string {
  return /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}

/** A name on a drawing has room for so many letters; the panel and the finding have all of it. */
const MOST_LETTERS = 32;

/**
 * A name as a drawing has room for it: cut with an ellipsis where it is long, which stands at the end of names from right
 * to left too.
 */
export function drawnName(name: string): string {
  // A name has no more letters than characters.
  if (name.length <= MOST_LETTERS) return name;
  const letters = lettersOf(name);
  if (letters.length <= MOST_LETTERS) return name;
  return `\u2068${letters.slice(0, MOST_LETTERS).join('').trimEnd()}…\u2069`;
}

const SAYS = {
  showing: 'shows',
  mirrored: 'is mirrored',
  'lost in the dark': 'is lost in the dark',
  covered: 'is covered',
  close: 'is close',
  clear: 'is clear',
} as const;

/** What a screen reader says of an item: its name, what it is, and what it does in the chosen setup. */
export function spokenName(item: Item, letter: string | null, report: ItemReport | null): string {
  const may = report && isLetShow(report) ? ', which was let show' : '';
  const says = letter !== null && report ? `, ${SAYS[report.verdict]} in setup ${letter}${may}` : '';
  return `${nameOf(item)}, ${kindOf(item)}${says}`;
}

/** The short name of marks in one place: the performer's initial and their places in the walk, as in `V3, 4`. */
export const markNames = (performer: string, places: readonly number[]): string =>
  `${(lettersOf(performer.trim())[0] ?? '').toUpperCase()}${places.map((place) => place + 1).join(', ')}`;
