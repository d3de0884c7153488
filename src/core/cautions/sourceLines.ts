import { SOURCES, type Source, type SourceKey } from '../sources';

/** Where what has no source comes from. */
export const NO_SOURCE = 'common practice, or what the plan itself says';

const SEEN: Readonly<Record<Source['seen'], string>> = {
  read: 'read',
  memory: 'from memory',
  package: 'of a named package',
  'common practice, no source': 'common practice',
};

/** Each source in full: what it is, where it was found, and whether it was read. */
export function sourceLines(keys: readonly SourceKey[]): readonly string[] {
  if (keys.length === 0) return [`Source: ${NO_SOURCE}.`];
  return keys.map((key) => {
    const { title, where, seen }: Source = SOURCES[key];
    return `${title} (${where}; ${SEEN[seen]}).`;
  });
}
