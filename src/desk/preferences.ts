/** Small choices kept in the browser: theme, units. Where storage is refused, they last as long as the page. */
const PREFIX = 'standclear.';

/** The stored word if it is one of `allowed`, else null. */
export function readPreference<Word extends string>(key: string, allowed: readonly Word[]): Word | null {
  const found = readStored(key);
  return allowed.find((word) => word === found) ?? null;
}

/** The stored words that are among `allowed`, each once, in the order in which they are allowed. */
export function readPreferences<Word extends string>(key: string, allowed: readonly Word[]): readonly Word[] {
  const found = readStored(key)?.split(' ') ?? [];
  return allowed.filter((word) => found.includes(word));
}

/** Keeps a word, or several with blanks between them. */
export function writePreference(key: string, word: string): void {
  try {
    localStorage.setItem(PREFIX + key, word);
  } catch {
    // Private windows and full disks refuse; the choice still holds in this page.
  }
}

/** What is stored, as it is; null for nothing, and where storage is refused. */
export function readStored(key: string): string | null {
  try {
    return localStorage.getItem(PREFIX + key);
  } catch {
    return null;
  }
}
