import type { Plan } from '../../core/plan/schema/plan';
import { sameData } from '../../core/units/sameData';
import { onShelf } from '../shelf';
import type { KeptVersion } from './shelfTypes';
import { versionsToDrop } from './versionLimits';

/** A version as it was found. */
export interface FoundVersion extends KeptVersion {
  readonly at: number;
}

const allOf = (planId: string): IDBKeyRange => IDBKeyRange.bound([planId], [planId, []]);

/** Keeps a state of a plan, unless it is what the newest version says, and gives up what is too much by then. */
export function addVersion(planId: string, plan: Plan, reason: string): Promise<void> {
  return onShelf(['versions'], 'readwrite', async ({ store }) => {
    const newest = (await store.openCursor(allOf(planId), 'prev')) ?? null;
    if (newest && sameData(newest.value.document, plan)) return;
    const at = Math.max(Date.now(), newest ? newest.key[1] + 1 : 0);
    await store.put({ document: plan, reason }, [planId, at]);
    for (const [ofPlan, since] of versionsToDrop(await store.getAllKeys())) {
      await store.delete([ofPlan, since]);
    }
  });
}

/** The versions of a plan, the newest first. */
export function findVersions(planId: string): Promise<FoundVersion[]> {
  return onShelf(['versions'], 'readonly', async ({ store }) => {
    const [keys, values] = await Promise.all([store.getAllKeys(allOf(planId)), store.getAll(allOf(planId))]);
    return values.map((value, index) => ({ ...value, at: keys[index][1] })).reverse();
  });
}

/**
 * Makes room on a full device: the pictures go first, then the versions but for the newest of each plan, then those.
 * Documents are never given up.
 * @returns whether there was anything to give up
 */
export function giveUpLesser(): Promise<boolean> {
  return onShelf(['pictures', 'versions'], 'readwrite', async (transaction) => {
    const pictures = transaction.objectStore('pictures');
    const versions = transaction.objectStore('versions');
    if ((await pictures.count()) > 0) {
      await pictures.clear();
      return true;
    }
    const keys = await versions.getAllKeys();
    const newest = new Map(keys.map((key) => [key[0], key]));
    const older = keys.filter((key) => newest.get(key[0]) !== key);
    for (const key of older.length > 0 ? older : keys) await versions.delete(key);
    return keys.length > 0;
  });
}
