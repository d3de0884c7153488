/** Numbers of parts or items, one up, 0 for nothing: two bytes a pixel as long as they fit, since drawing waits for memory. */
export type Tags = Uint16Array | Int32Array;

/** The tags of a buffer two at a time, where they take two bytes each; null where they take four. */
export type Pairs = Int32Array | null;

/** The same memory as some tags, by twos. */
export const pairsOf = (tags: Tags): Pairs =>
  tags instanceof Uint16Array ? new Int32Array(tags.buffer, 0, tags.length >> 1) : null;

/** Where the run of one tag that begins at a place ends: the first place of another one, or `end`. */
export function endOfRun(tags: Tags, pairs: Pairs, from: number, end: number): number {
  const tag = tags[from];
  let at = from + 1;
  if (pairs) {
    if ((at & 1) === 1 && at < end) {
      if (tags[at] !== tag) return at;
      at += 1;
    }
    const pair = (tag << 16) | tag;
    while (at + 1 < end && pairs[at >> 1] === pair) at += 2;
  }
  while (at < end && tags[at] === tag) at += 1;
  return at;
}
