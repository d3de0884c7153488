const LINE = /\bSource: ((?:\[[\w-]+\](?:, )?)+)/g;
const ENTRY = /\bsource["']?: ["']([\w-]+)["']/g;

/**
 * Reads the keys that a text cites: `Source: [key], [key]` in a docstring, `source: 'key'` in data.
 * What has no source says so in words, which are no key.
 */
export function citedSources(text: string): string[] {
  const fromLines = [...text.matchAll(LINE)].flatMap(([, keys = '']) =>
    [...keys.matchAll(/[\w-]+/g)].map(([key]) => key),
  );
  const fromEntries = [...text.matchAll(ENTRY)].map(([, key = '']) => key);
  return [...fromLines, ...fromEntries];
}
