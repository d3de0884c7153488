import bidiFactory from 'bidi-js';

const bidi = bidiFactory();

/** Letters of scripts that are written from the right. */
const FROM_RIGHT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;
/** Letters that are written from the left. */
const FROM_LEFT = /[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}]/u;

/**
 * How deep each code unit of a line is in directions, even from the left and odd from the right; null where all of it
 * runs from the left. A line with a letter of ours runs from the left, whatever names are in it.
 * Source: [bidi]
 */
export function levelsOf(text: string): Uint8Array | null {
  if (!FROM_RIGHT.test(text)) return null;
  return bidi.getEmbeddingLevels(text, FROM_LEFT.test(text) ? 'ltr' : 'rtl').levels;
}

/** What stands for a letter where it is written from the right: a bracket turns. */
export const mirrored = (letter: string): string => bidi.getMirroredCharacter(letter) ?? letter;

/** Pieces of a line, each of one level, in the order in which they stand from left to right. Source: [bidi] */
export function inSight<Piece extends { readonly level: number }>(
  pieces: readonly Piece[],
): readonly Piece[] {
  let order = [...pieces];
  const deepest = Math.max(0, ...pieces.map(({ level }) => level));
  for (let level = deepest; level >= 1; level -= 1) {
    const next: Piece[] = [];
    let run: Piece[] = [];
    for (const piece of order) {
      if (piece.level >= level) run.unshift(piece);
      else {
        next.push(...run, piece);
        run = [];
      }
    }
    order = [...next, ...run];
  }
  return order;
}
