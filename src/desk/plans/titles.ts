/** The schema's longest title. */
const LONGEST = 80;

/** A title with words after it, as `Loft Night, copy`: never twice the same words, never longer than a title may be. */
export function titleWith(title: string, words: string): string {
  const tail = `, ${words}`;
  const stem = title.endsWith(tail) ? title.slice(0, -tail.length) : title;
  return `${stem.slice(0, LONGEST - tail.length)}${tail}`;
}
