import type { DBSchema } from 'idb';
import { ownDatabase } from '../ownDatabase';

/** A file that a plan names, as this device holds it. */
interface KeptFile {
  readonly blob: Blob;
  readonly name: string;
}

interface Shelf extends DBSchema {
  files: { key: string; value: KeptFile };
}

/** A database of its own: a plan is small and written often, a scan is large and written once. */
const openShelf = ownDatabase<Shelf>('standclear-assets', (database) => {
  database.createObjectStore('files');
});

/** The file with these contents; null where this device has none, or storage is refused. */
export async function keptFile(sha256: string): Promise<Blob | null> {
  try {
    return (await (await openShelf()).get('files', sha256))?.blob ?? null;
  } catch {
    return null;
  }
}

const megabytes = (bytes: number): string =>
  `${Math.max(1, Math.round(bytes / 1e6)).toLocaleString('en-GB')} MB`;

/**
 * Keeps a file beside the plans of this device.
 *
 * @returns null, or why it could not be kept, as a sentence
 */
export async function keepFile(sha256: string, blob: Blob, name: string): Promise<string | null> {
  const { quota, usage } = await roomLeft();
  const left = quota === null ? null : Math.max(0, quota - usage);
  if (left !== null && left < blob.size) {
    return `There is room for ${megabytes(left)} more on this device, and ${name} takes ${megabytes(blob.size)}. Make room, or save a smaller file.`;
  }
  try {
    await (await openShelf()).put('files', { blob, name }, sha256);
    return null;
  } catch (error) {
    return error instanceof DOMException && error.name === 'QuotaExceededError'
      ? `This device has no room for ${name} (${megabytes(blob.size)}). Make room, or save a smaller file.`
      : `This browser does not let the page keep ${name}. A private window, or its settings, may be why.`;
  }
}

async function roomLeft(): Promise<{ readonly quota: number | null; readonly usage: number }> {
  try {
    const { quota = null, usage = 0 } = await navigator.storage.estimate();
    return { quota, usage };
  } catch {
    return { quota: null, usage: 0 };
  }
}
