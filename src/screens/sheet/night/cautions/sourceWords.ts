import { SOURCES, type Source, type SourceKey } from '../../../../core/sources';

/** Where what has no source comes from. */
const NO_SOURCE = 'common practice, or what the plan itself says';

/** The source of a row in a few words: its rule or its title with where it was found, and how many more there are. */
export function sourceShort(keys: readonly SourceKey[]): string {
  const [first] = keys;
  if (first === undefined) return NO_SOURCE;
  const { title, where } = SOURCES[first];
  const [head = title] = title.split(/: |; /);
  const [place = where] = where.split(/[/,;]/);
  const more = keys.length === 1 ? '' : ` and ${keys.length - 1} more`;
  return `${title.startsWith('US ') ? head : `${head} (${place})`}${more}`;
}

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
