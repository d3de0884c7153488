const MOST_LETTERS = 80;

/** A file's name as a plan keeps it: one line, without control characters. */
export function fileLabel(name: string): string {
  const plain = name.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, ' ').trim();
  return plain.slice(0, MOST_LETTERS) || 'file';
}

/** What a thing made from a file is called: the file's name without its ending. */
export const labelFrom = (name: string): string =>
  fileLabel(name)
    .replace(/\.[A-Za-z0-9]{1,5}$/, '')
    .replace(/[_\s]+/g, ' ')
    .trim() || 'Model';
