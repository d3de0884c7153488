import { createStore } from 'zustand/vanilla';

/** Whether this browser refused to keep something for the crew sheet: then it is said, once, and the sheet goes on. */
export const storageStore = createStore<{ readonly refused: boolean }>()(() => ({ refused: false }));

const PREFIX = 'standclear.crew.';

/** What is stored under a name, as JSON that nobody has checked yet; null for nothing, for what is none, and where storage is refused. */
export function stored(name: string): unknown {
  try {
    const text = localStorage.getItem(PREFIX + name);
    return text === null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}

/** Takes away what is stored under a name; where the browser refuses, it stays. */
export function unstore(name: string): void {
  try {
    localStorage.removeItem(PREFIX + name);
  } catch {
    // What cannot be written cannot have been kept either.
  }
}

/** Stores a value under a name; where the browser refuses, that is noted. */
export function store(name: string, value: unknown): void {
  try {
    localStorage.setItem(PREFIX + name, JSON.stringify(value));
  } catch {
    storageStore.setState({ refused: true });
  }
}
