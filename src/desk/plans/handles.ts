import { onShelf, shelved } from '../shelf';

/** Where a device that keeps nothing keeps them: as long as the page. */
const here = new Map<string, FileSystemFileHandle>();

/** Remembers where a plan was opened from or saved to, over reloads where the browser lets a handle be kept. */
export async function rememberHandle(planId: string, handle: FileSystemFileHandle): Promise<void> {
  here.set(planId, handle);
  try {
    await onShelf(['handles'], 'readwrite', ({ store }) => store.put(handle, planId));
  } catch {
    // It is remembered in the page.
  }
}

/** Where a plan was last opened from or saved to, or null. */
export async function handleOf(planId: string): Promise<FileSystemFileHandle | null> {
  const known = here.get(planId);
  if (known) return known;
  try {
    return await shelved('handles', planId);
  } catch {
    return null;
  }
}

/** The kept plan that came from the same file, or null. */
export async function planOfFile(handle: FileSystemFileHandle): Promise<string | null> {
  const all = new Map(here);
  try {
    await onShelf(['handles'], 'readonly', async ({ store }) => {
      const [keys, handles] = await Promise.all([store.getAllKeys(), store.getAll()]);
      for (const [index, planId] of keys.entries()) all.set(planId, handles[index]);
    });
  } catch {
    // Those of this page are known.
  }
  for (const [planId, other] of all) if (await other.isSameEntry(handle)) return planId;
  return null;
}
