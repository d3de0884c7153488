import { type Kept, type KeptFile, type KeptList, nameOfBuild, startOfNames } from '../keptList';

/** So many files come at once: more would only share the same line. */
const AT_ONCE = 4;

/** The files of one build on this device. */
export class Shelf {
  readonly #list: KeptList;
  readonly #folder: string;
  readonly #name: string;

  /** @param folder the address of the folder that the page lies in, with a slash at the end */
  constructor(list: KeptList, folder: string) {
    this.#list = list;
    this.#folder = folder;
    this.#name = nameOfBuild(folder, list.build);
  }

  /**
   * Keeps those of the files that are missing.
   * @throws an error with a sentence when one does not come, or is not of this build
   */
  async keep(files: readonly KeptFile[]): Promise<void> {
    const cache = await caches.open(this.#name);
    const waiting = [...files];
    const bringNext = async (): Promise<void> => {
      for (let file = waiting.shift(); file; file = waiting.shift()) await this.#bring(cache, file);
    };
    await Promise.all(Array.from({ length: AT_ONCE }, bringNext));
  }

  /** How much of the build is here. */
  async kept(): Promise<Kept> {
    if (!(await caches.has(this.#name))) return 'nothing';
    const here = new Set((await (await caches.open(this.#name)).keys()).map(({ url }) => url));
    const has = ({ path }: KeptFile): boolean => here.has(this.#addressOf(path));
    if (!this.#list.crew.every(has)) return 'nothing';
    return this.#list.rest.every(has) ? 'all' : 'crew';
  }

  /**
   * The kept answer to a request for a file of the page, of this build before all others: pages of an older one that
   * are still open ask for theirs too. Undefined where there is none.
   */
  async find(address: string): Promise<Response | undefined> {
    const { origin, pathname } = new URL(address);
    const isPage = origin + pathname === this.#folder;
    const file = isPage ? this.#addressOf(this.#list.page) : origin + pathname;
    const own = await caches.match(file, { cacheName: this.#name });
    if (own) return own;
    for (const cacheName of await this.#others()) {
      const older = await caches.match(file, { cacheName });
      if (older) return older;
    }
    return undefined;
  }

  /** Lets go of builds that no open page is of: each page holds a lock named after its own for as long as it lives. */
  async letGoOfOld(): Promise<void> {
    for (const name of await this.#others())
      await navigator.locks.request(name, { ifAvailable: true }, async (lock) => {
        if (lock) await caches.delete(name);
      });
  }

  async #others(): Promise<string[]> {
    const start = startOfNames(this.#folder);
    return (await caches.keys()).filter((name) => name.startsWith(start) && name !== this.#name);
  }

  async #bring(cache: Cache, file: KeptFile): Promise<void> {
    const address = this.#addressOf(file.path);
    if (await cache.match(address)) return;
    if (file.isNamedByContent) {
      const same = await this.find(address);
      if (same) return cache.put(address, same);
    }
    const answer = await fetch(address, {
      cache: file.isNamedByContent ? 'default' : 'no-cache',
      integrity: file.integrity,
    });
    if (!answer.ok) throw new Error(`${file.path} did not come: the server answered ${answer.status}`);
    // Some servers send readers of index.html on to its folder, and a page may not be opened with such an answer.
    const plain = answer.redirected ? new Response(answer.body, { headers: answer.headers }) : answer;
    await cache.put(address, plain);
  }

  #addressOf(path: string): string {
    return new URL(path, this.#folder).href;
  }
}
