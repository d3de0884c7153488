import { onShelf, shelved } from '../shelf';

/** Each tab comes back to its own plan, so long as the tab is there. */
const KEY = 'standclear.plan';

/** Remembers what this tab has open. */
export function rememberOpen(planId: string): void {
  try {
    sessionStorage.setItem(KEY, planId);
  } catch {
    // Without it the tab comes back to what was open last on the device.
  }
  onShelf(['meta'], 'readwrite', ({ store }) => store.put(planId, 'lastOpen')).catch(() => {});
}

function ofThisTab(): string | null {
  try {
    return sessionStorage.getItem(KEY);
  } catch {
    return null;
  }
}

/** The plans to come back to: this tab's own, then the one that was open last on the device. */
export async function lastOpen(): Promise<readonly string[]> {
  return [ofThisTab(), await shelved('meta', 'lastOpen')].filter((id) => id !== null);
}
