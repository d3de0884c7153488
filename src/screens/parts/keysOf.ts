/** A key for each of some words, which need not differ: the second of the same gets another than the first. */
export function keysOf(words: readonly string[]): readonly string[] {
  const seen = new Map<string, number>();
  return words.map((word) => {
    const times = (seen.get(word) ?? 0) + 1;
    seen.set(word, times);
    return times === 1 ? word : `${word} ${times}`;
  });
}
