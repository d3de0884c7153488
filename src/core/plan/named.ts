/** A sign that ends or divides, with nothing or a space after it: within a sentence it would be taken for one of its own. */
const DIVIDES = /[,;:.!?…]($|\s)/;
/** A name of which nothing can be seen: spaces, marks of direction, letters that have no drawing. */
const UNSEEN = /^[\s\p{Cc}\p{Cf}\p{Default_Ignorable_Code_Point}\u2800]*$/u;

/**
 * A name as it stands within a sentence: as it is written, or in quotation marks where it has signs that would be read
 * as the sentence's, such as the comma of “Wide, both”. At the head of a line, before a colon, a name stands bare.
 */
export const named = (label: string): string =>
  DIVIDES.test(label) ? `“${label.replaceAll('“', '‘').replaceAll('”', '’')}”` : label;

/** What a thing is called: its name, or what it is, such as `stand`, where nothing can be seen of that. */
export const calledBy = (label: string, kind: string): string => (UNSEEN.test(label) ? kind : label);
