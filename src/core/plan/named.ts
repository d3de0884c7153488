/** A sign that ends or divides, with nothing or a space after it: within a sentence it would be taken for one of its own. */
const DIVIDES = /[,;:.!?…]($|\s)/;

/**
 * A name as it stands within a sentence: as it is written, or in quotation marks where it has signs that would be read
 * as the sentence's, such as the comma of “Wide, both”. At the head of a line, before a colon, a name stands bare.
 */
export const named = (label: string): string =>
  DIVIDES.test(label) ? `“${label.replaceAll('“', '‘').replaceAll('”', '’')}”` : label;
