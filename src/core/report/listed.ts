/** Words in a row: `A`, `A and B`, `A, B and C`; with another word than *and* before the last where that is said. */
export function listed(words: readonly string[], between = 'and'): string {
  const last = words[words.length - 1] ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${between} ${last}`;
}
