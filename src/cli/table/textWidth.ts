/** East Asian wide and full-width characters, and emoji: two columns each in a terminal. */
const WIDE =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}|[\u{20000}-\u{3fffd}]/u;
const WIDTHLESS = /^[\p{Mn}\p{Me}\p{Cf}]$/u;

/** How many columns of a terminal a text takes. */
export function textWidth(text: string): number {
  let width = 0;
  for (const character of text) {
    if (!WIDTHLESS.test(character)) width += WIDE.test(character) ? 2 : 1;
  }
  return width;
}

/** The text cut to a width, with an ellipsis where something is left out. */
export function cutTo(text: string, width: number): string {
  if (textWidth(text) <= width) return text;
  let cut = '';
  let used = 0;
  for (const character of text) {
    const own = textWidth(character);
    if (used + own > width - 1) break;
    cut += character;
    used += own;
  }
  return width > 0 ? `${cut.trimEnd()}…` : '';
}

/** The text with spaces behind it, or before it, up to a width. */
export function padTo(text: string, width: number, side: 'left' | 'right' = 'left'): string {
  const spaces = ' '.repeat(Math.max(0, width - textWidth(text)));
  return side === 'left' ? text + spaces : spaces + text;
}

/** The text in lines of a width, broken at spaces; a word that is longer has a line of its own. Later lines begin with `hang`. */
export function wrapTo(text: string, width: number, hang = ''): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line.trim() === '' || textWidth(longer) <= width) {
      line = line.trim() === '' ? line + word : longer;
      continue;
    }
    lines.push(line);
    line = hang + word;
  }
  return [...lines, line];
}
