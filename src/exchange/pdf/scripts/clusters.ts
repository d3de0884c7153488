import type { Font, PathCommand } from '@cantoo/fontkit';
import type { ScriptFont } from './scriptFonts';

/** Some letters that are drawn as one: a letter with its marks, a conjunct. In thousandths of the size. */
export interface Cluster {
  /** The same for the same drawing of the same letters. */
  readonly key: string;
  readonly text: string;
  readonly advance: number;
  readonly outline: readonly PathCommand[];
}

interface Placed {
  readonly id: number;
  readonly codes: readonly number[];
  readonly x: number;
  readonly y: number;
  readonly advance: number;
}

const MARK = /^\p{M}/u;
/** What shaping puts under a mark that it takes to have no letter: a name that is written right has none. */
const DOTTED_CIRCLE = '\u25cc';
const DOTTED = 0x25cc;

/** A text of one script and one direction as clusters from left to right, each with the letters that it stands for. */
export function clustersOf(
  { font, name }: ScriptFont,
  text: string,
  isRightToLeft: boolean,
): readonly Cluster[] {
  const { glyphs, positions } = font.layout(
    text,
    undefined,
    undefined,
    undefined,
    isRightToLeft ? 'rtl' : 'ltr',
  );
  const toThousandths = 1000 / font.unitsPerEm;
  let pen = 0;
  const placed = glyphs.flatMap(({ id, codePoints, advanceWidth }, k): readonly Placed[] => {
    if (codePoints.includes(DOTTED) && !text.includes(DOTTED_CIRCLE)) return [];
    const { xAdvance, xOffset, yOffset } = positions?.[k] ?? {
      xAdvance: advanceWidth,
      xOffset: 0,
      yOffset: 0,
    };
    const at = pen;
    pen += xAdvance;
    return [{ id, codes: codePoints, x: at + xOffset, y: yOffset, advance: xAdvance }];
  });
  const inOrder = isRightToLeft ? placed.toReversed() : placed;
  let start = 0;
  const clusters = grouped(inOrder, text).map(({ glyphs: own, text: letters }): Cluster => {
    const drawn = isRightToLeft ? own.toReversed() : own;
    const advance = own.reduce((sum, glyph) => sum + glyph.advance, 0);
    start += advance;
    const from = isRightToLeft ? pen - start : start - advance;
    const outline = drawn.flatMap(({ id, x, y }) => outlineOf(font, id, x - from, y, toThousandths));
    const key = `${name} ${letters} ${drawn.map(({ id, x, y }) => `${id} ${x - from} ${y}`).join(' ')}`;
    return { key, text: letters, advance: advance * toThousandths, outline };
  });
  return isRightToLeft ? clusters.toReversed() : clusters;
}

interface Group {
  readonly glyphs: readonly Placed[];
  readonly text: string;
}

/**
 * Glyphs in the order of their letters, in groups that have letters that follow each other: shaping changes their order
 * within a group only. What has no letters of its own, and marks, go with what is before them.
 */
function grouped(glyphs: readonly Placed[], text: string): readonly Group[] {
  const letters = Array.from(text);
  const groups: { glyphs: Placed[]; text: string }[] = [];
  const pending = new Map<string, number>();
  let own: Placed[] = [];
  let [from, until] = [0, 0];
  const count = (letter: string, by: number): void => {
    const left = (pending.get(letter) ?? 0) + by;
    if (left === 0) pending.delete(letter);
    else pending.set(letter, left);
  };
  for (const glyph of glyphs) {
    const last = groups[groups.length - 1];
    if (own.length === 0 && glyph.codes.length === 0 && last) {
      last.glyphs.push(glyph);
      continue;
    }
    own.push(glyph);
    for (const code of glyph.codes) {
      count(String.fromCodePoint(code), 1);
      if (until < letters.length) count(letters[until], -1);
      until += 1;
    }
    if (pending.size > 0 || until === from) continue;
    const said = letters.slice(from, until).join('');
    if (MARK.test(said) && last) {
      last.glyphs.push(...own);
      last.text += said;
    } else groups.push({ glyphs: own, text: said });
    own = [];
    from = until;
  }
  if (own.length > 0 || from < letters.length)
    groups.push({ glyphs: own, text: letters.slice(from).join('') });
  return groups;
}

function outlineOf(font: Font, id: number, x: number, y: number, scale: number): readonly PathCommand[] {
  return (font.getGlyph(id)?.path.commands ?? []).map(({ command, args }) => ({
    command,
    args: args.map((value, k) => (value + (k % 2 === 0 ? x : y)) * scale),
  }));
}
