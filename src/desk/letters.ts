/** One for all texts: to make one takes longer than to use it. */
const LETTERS = new Intl.Segmenter();

/** What reads as one letter each, however many characters it has. */
export const lettersOf = (text: string): readonly string[] =>
  Array.from(LETTERS.segment(text), ({ segment }) => segment);
