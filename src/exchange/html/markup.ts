/** A piece of HTML that is safe to put into another: all that came from outside in it is text. */
export class Markup {
  constructor(readonly html: string) {}
}

type Value = string | number | Markup | readonly Markup[];

/** What no text of a page may have: controls, and marks that turn the direction of what stands around them. */
const UNWANTED = /(?![\t\n\r])\p{Cc}|\p{Cs}|[\u202a-\u202e\u2066-\u2069]/gu;
const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text as HTML shows it, letter by letter, inside an element or a quoted attribute. */
export const escaped = (text: string): string =>
  text.replace(UNWANTED, '').replace(/[&<>"']/g, (letter) => ESCAPES[letter] ?? letter);

const written = (value: Value): string => {
  if (value instanceof Markup) return value.html;
  if (typeof value === 'object') return value.map(({ html: text }) => text).join('');
  return escaped(String(value));
};

/** A template of HTML: whatever is put into it is text unless it is markup already. Attributes have to be quoted. */
export const html = (strings: TemplateStringsArray, ...values: readonly Value[]): Markup =>
  new Markup(strings.map((part, k) => part + (k < values.length ? written(values[k]) : '')).join(''));

export const NOTHING = new Markup('');
