/** An address, or a path: letters on both sides of a stroke, and longer than a unit such as m/s. */
const ADDRESS = /\S{4,}\/\S{4,}/;
/** Where one may go on in the next line: after its strokes, dots and dashes. */
const AFTER_SIGN = /(?<=[/._?&=-])/;

/**
 * Splits words into pieces between which a line may break: whole words stay one piece, with the space after them, and
 * addresses are split after their signs, so that no line breaks in the middle of a word.
 */
export function breakingPieces(words: string): readonly string[] {
  return words
    .split(/(?<=\s)/)
    .flatMap((word) => (ADDRESS.test(word) ? word.split(AFTER_SIGN) : word))
    .reduce<string[]>((pieces, piece) => {
      const last = pieces.at(-1);
      // A run of whole words is one piece: it breaks at its spaces anyway.
      if (last?.endsWith(' ')) pieces[pieces.length - 1] = last + piece;
      else pieces.push(piece);
      return pieces;
    }, []);
}
