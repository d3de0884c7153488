/** A file of the built page, as the offline worker keeps it. */
export interface KeptFile {
  /** Below the page's own folder, with forward slashes. */
  readonly path: string;
  /** `sha384-…` as for subresource integrity. */
  readonly integrity: string;
  /** Whether the name changes with what is in it, so that a copy under this name never grows old. */
  readonly isNamedByContent: boolean;
}

/** What one build of the page consists of. */
export interface KeptList {
  /** Names the build: made of the names and contents of all its files. */
  readonly build: string;
  /** Names of the file that all pages open with. */
  readonly page: string;
  /** What the crew sheet needs, with its pictures. */
  readonly crew: readonly KeptFile[];
  /** All the other files. */
  readonly rest: readonly KeptFile[];
}

/** How much of a build lies on the device: nothing that can be relied on, all that the crew sheet needs, everything. */
export type Kept = 'nothing' | 'crew' | 'all';

/** What a page asks the offline worker. */
export interface Question {
  /** `kept`: how much is kept; `rest`: keep what is missing; `takeOver`: serve all pages from now on. */
  readonly ask: 'kept' | 'rest' | 'takeOver';
}

/** What the worker answers to `kept` and `rest`. */
export interface Answer {
  readonly build: string;
  readonly kept: Kept;
}

/**
 * The name of the cache that holds a build, and of the lock that each of its open pages holds: another copy of the page
 * in another folder of the same server has others.
 * @param folder the address of the folder that the page lies in, with a slash at the end
 */
export const nameOfBuild = (folder: string, build: string): string => `${startOfNames(folder)}${build}`;

/** What the names of all builds in a folder begin with. */
export const startOfNames = (folder: string): string => `standclear ${new URL(folder).pathname} `;
