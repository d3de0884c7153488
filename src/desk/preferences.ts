/** Small choices kept in the browser: theme, units. Where storage is refused, they last as long as the page. */
const PREFIX = 'standclear.';

/** The stored word if it is one of `allowed`, else null. */
export function readPreference<Word extends string>(key: string, allowed: readonly Word[]): Word | null {
  try {
    const found = localStorage.getItem(PREFIX + key);
    return allowed.find((word) => word === found) ?? null;
  } catch {
    return null;
  }
}

export function writePreference(key: string, word: string): void {
  try {
    localStorage.setItem(PREFIX + key, word);
  } catch {
    // Private windows and full disks refuse; the choice still holds in this page.
  }
}
