import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/**
 * A database of its own, in its first version, which is opened by the first question and once for all. Deleted under the
 * page, or closed by the browser, the next question opens it again.
 * @throws (the promise) what the browser says where it refuses storage; then the next question tries anew
 */
export function ownDatabase<Schema extends DBSchema>(
  name: string,
  upgrade: (database: IDBPDatabase<Schema>) => void,
): () => Promise<IDBPDatabase<Schema>> {
  let opening: Promise<IDBPDatabase<Schema>> | null = null;
  return () => {
    opening ??= openDB<Schema>(name, 1, {
      upgrade,
      terminated: () => {
        opening = null;
      },
      blocking: (_current, _blocked, event) => {
        if (event.target instanceof IDBDatabase) event.target.close();
        opening = null;
      },
    }).catch((error: unknown) => {
      opening = null;
      throw error;
    });
    return opening;
  };
}
