import type { DBSchema } from 'idb';
import { sha256Of } from '../../assets/sha256';
import { ownDatabase } from '../../ownDatabase';

interface KeptStill {
  readonly bytes: ArrayBuffer;
  /** When it was kept, milliseconds. */
  readonly at: number;
}

interface Shelf extends DBSchema {
  stills: { key: string; value: KeptStill; indexes: { at: number } };
}

/** More than this many are not kept: a few nights, some 5 MB. */
const MOST = 120;
export const STILL_TYPE = 'image/jpeg';

const openShelf = ownDatabase<Shelf>('standclear-crew', (database) => {
  database.createObjectStore('stills').createIndex('at', 'at');
});

/** A link is long, and nothing of it need lie in the open: its key is a digest. */
const digestOf = (key: string): Promise<string> =>
  sha256Of(Uint8Array.from(new TextEncoder().encode(key)).buffer);

/** The still that this device keeps under a key; null where there is none, or where the browser keeps nothing. */
export async function keptStill(key: string): Promise<Blob | null> {
  try {
    const found: unknown = await (await openShelf()).get('stills', await digestOf(key));
    if (typeof found !== 'object' || found === null || !('bytes' in found)) return null;
    const { bytes } = found;
    return bytes instanceof ArrayBuffer && bytes.byteLength > 0
      ? new Blob([bytes], { type: STILL_TYPE })
      : null;
  } catch {
    return null;
  }
}

/** Keeps a still for the next time, in place of the oldest where there are many. Where nothing can be kept, it is not. */
export async function keepStill(key: string, blob: Blob): Promise<void> {
  try {
    const [digest, bytes] = await Promise.all([digestOf(key), blob.arrayBuffer()]);
    const stills = (await openShelf()).transaction('stills', 'readwrite').store;
    await stills.put({ bytes, at: Date.now() }, digest);
    let over = (await stills.count()) - MOST;
    for (let cursor = await stills.index('at').openCursor(); cursor && over > 0; over -= 1) {
      await cursor.delete();
      cursor = await cursor.continue();
    }
  } catch {
    // Private windows and full disks refuse: the still is there as long as the page.
  }
}
