import { NO_SOURCE } from '../../../../core/cautions/sourceLines';
import { SOURCES, type SourceKey } from '../../../../core/sources';

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
