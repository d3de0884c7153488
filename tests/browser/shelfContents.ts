import type { Page } from 'playwright-core';

/** What lies on the shelf of the page's device. */
export interface ShelfContents {
  readonly rows: readonly { readonly id: string; readonly title: string; readonly writing: number }[];
  readonly documents: Readonly<Record<string, unknown>>;
  readonly lastOpen: string | null;
  readonly versions: readonly { readonly reason: string }[];
  readonly pictures: number;
}

/** Reads the shelf as it is on the device, past the page's own code. */
export function shelfContents(page: Page): Promise<ShelfContents> {
  return page.evaluate(async () => {
    const done = <Result>(request: IDBRequest<Result>): Promise<Result> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await done(indexedDB.open('standclear'));
    const names = ['plans', 'documents', 'meta', 'versions', 'pictures'];
    const transaction = database.transaction(names);
    const [rows, ids, documents, lastOpen, versions, pictures] = await Promise.all([
      done(transaction.objectStore('plans').getAll()),
      done(transaction.objectStore('documents').getAllKeys()),
      done(transaction.objectStore('documents').getAll()),
      done(transaction.objectStore('meta').get('lastOpen')),
      done(transaction.objectStore('versions').getAll()),
      done(transaction.objectStore('pictures').count()),
    ]);
    database.close();
    return {
      rows,
      documents: Object.fromEntries(ids.map((id, index) => [String(id), documents[index]])),
      lastOpen: lastOpen ?? null,
      versions,
      pictures,
    };
  });
}

/** The documents on the shelf, by their titles. */
export async function titlesKept(page: Page): Promise<string[]> {
  return (await shelfContents(page)).rows.map(({ title }) => title).sort();
}
