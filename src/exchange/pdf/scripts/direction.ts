import bidiFactory from 'bidi-js';

const bidi = bidiFactory();

/** Letters of scripts that are written from the right. */
const FROM_RIGHT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;
/** What comes up to the sign that ends it has a direction of its own. */
const APART = '\u2068';
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

const SIGNS = /[\\^$.*+?()[\]{}|]/g;

/**
 * Sets names that run from the right apart from what stands beside them: a number behind one, such as a date, would be
 * taken into it and turned round.
 */
export function settingApart(names: readonly string[]): (text: string) => string {
  const own = names.filter((name) => FROM_RIGHT.test(name)).toSorted((a, b) => b.length - a.length);
  if (own.length === 0) return (text) => text;
  const any = new RegExp(own.map((name) => name.replace(SIGNS, '\\$&')).join('|'), 'gu');
  return (text) => (text.includes(APART) ? text : text.replace(any, `${APART}$&${'\u2069'}`));
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
