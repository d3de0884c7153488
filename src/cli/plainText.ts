/** Control and format characters, line and paragraph separators: a name could drive a terminal, or turn its writing, with them. */
const UNPRINTABLE = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu;

/** A text from a plan as one line that is safe to print. */
export const plainText = (text: string): string => text.replace(UNPRINTABLE, '');

/** A JSON text with those characters escaped as JSON allows: safe to print, and the values stay what they are. */
export const escapedForJson = (json: string): string =>
  json.replace(UNPRINTABLE, (character) => (character === '\n' ? character : escaped(character)));

function escaped(character: string): string {
  return Array.from({ length: character.length }, (_, unit) => {
    return `\\u${character.charCodeAt(unit).toString(16).padStart(4, '0')}`;
  }).join('');
}
