/// <reference path="./fonts/fonts.d.ts" />

import fontkit from '@cantoo/fontkit';
import { decodeFromBase64DataUri, type PDFDocument, type PDFFont, type PDFPage, rgb } from '@cantoo/pdf-lib';
import regularFile from './fonts/encode-sans-regular.ttf?inline';
import strongFile from './fonts/encode-sans-semibold.ttf?inline';
import otherFile from './fonts/noto-sans-greek-cyrillic.ttf?inline';
import { type Cluster, clustersOf } from './scripts/clusters';
import { inSight, levelsOf, mirrored, settingApart } from './scripts/direction';
import type { FontShelf } from './scripts/families';
import { letterGroups } from './scripts/letterGroups';
import { openFont, type ScriptFont, scriptFontsFor } from './scripts/scriptFonts';
import { ShapedLetters } from './scripts/shapedLetters';

/** How heavy letters are. */
export type Weight = 'regular' | 'strong';

/** Letters in one font, as they stand from left to right. */
type Run = { readonly text: string; readonly font: PDFFont } | { readonly clusters: readonly Cluster[] };

interface Face {
  readonly font: PDFFont;
  readonly letters: ReadonlySet<number>;
  /** The same for letters under marks, each of which is put where it belongs. */
  readonly marked: () => ScriptFont;
}

/** A piece of a line in one font and one direction. */
interface Piece {
  text: string;
  readonly font: PDFFont | ScriptFont;
  readonly level: number;
}

/** What is written, and where the fonts of its scripts are. */
export interface Scripts {
  /** All that may be written, in any order. */
  readonly text: string;
  readonly timeZone: string;
  readonly shelf: FontShelf;
}

/** What is printed for a letter that no font of the pack has. */
const STAND_IN = '?';
/** Controls, marks of direction and what has no width: nothing that could be drawn. What joins letters or parts them is not among them. */
const UNSEEN = /(?![\u200c\u200d])(?:\p{Cc}|\p{Cf}|\p{Default_Ignorable_Code_Point})/gu;
/** Breaks of lines, and a letter that is as empty as a space. */
const BLANK = /[\t\n\r]+|\u2800/g;
/** What is one letter of several characters and has no letter in it: a picture, a flag. */
const PICTURE = /^[\p{Extended_Pictographic}\p{Regional_Indicator}]/u;
const JOINER = /[\u200c\u200d]/;
/** No ligatures: each letter stays one to be searched for. */
const FEATURES = { liga: false, clig: false, dlig: false } as const;

/**
 * The letters of a document: one typeface in two weights, another for Greek and Cyrillic, both embedded as far as they
 * are used, and of other scripts what is written. What none has is printed as a question mark and kept in `missing`.
 */
export class Lettering {
  private readonly known = new Map<string, readonly Run[]>();
  private readonly gone = new Set<string>();

  private constructor(
    private readonly faces: Readonly<Record<Weight, readonly Face[]>>,
    private readonly scripts: ReadonlyMap<number, ScriptFont>,
    private readonly shaped: ShapedLetters,
    private readonly apart: (text: string) => string,
  ) {}

  static async of(
    document: PDFDocument,
    scripts: Scripts | null = null,
    names: readonly string[] = [],
  ): Promise<Lettering> {
    document.registerFontkit(fontkit);
    const face = async (file: string, customName: string): Promise<Face> => {
      const font = await document.embedFont(file, { subset: true, customName, features: FEATURES });
      let open: ScriptFont | null = null;
      const marked = (): ScriptFont => {
        open ??= { font: openFont(decodeFromBase64DataUri(file), customName), name: customName };
        return open;
      };
      return { font, letters: new Set(font.getCharacterSet()), marked };
    };
    const regular = await face(regularFile, 'PackRegular');
    const strong = await face(strongFile, 'PackStrong');
    const other = await face(otherFile, 'PackOther');
    const isKnown = (code: number): boolean => regular.letters.has(code) || other.letters.has(code);
    const more = scripts
      ? await scriptFontsFor(scripts.text, scripts.timeZone, isKnown, scripts.shelf)
      : new Map<number, ScriptFont>();
    const shaped = new ShapedLetters(document);
    return new Lettering(
      { regular: [regular, other], strong: [strong, other] },
      more,
      shaped,
      settingApart(names),
    );
  }

  /** Letters that were asked for and are in no font, in order. */
  get missing(): readonly string[] {
    return [...this.gone].sort();
  }

  /** Puts one line of text on a page, `y` its base line from the lower edge; a grey from 0, ink, to 1, paper. */
  draw(
    page: PDFPage,
    text: string,
    [x, y]: readonly [number, number],
    { size, weight, grey }: { readonly size: number; readonly weight: Weight; readonly grey: number },
  ): void {
    let at = x;
    for (const run of this.runs(text, weight)) {
      if ('clusters' in run) this.shaped.draw(page, run.clusters, [at, y], size, grey);
      else if (run.text !== '')
        page.drawText(run.text, { x: at, y, size, font: run.font, color: rgb(grey, grey, grey) });
      at += widthOf(run, size);
    }
  }

  /** Writes what could be written only when all letters were known. */
  finish(): void {
    this.shaped.finish();
  }

  /** How wide a text is at a size, points. */
  width(text: string, size: number, weight: Weight): number {
    return this.runs(text, weight).reduce((sum, run) => sum + widthOf(run, size), 0);
  }

  /** A text in lines no wider than `width` points. It breaks at spaces, a word that is too long anywhere. */
  lines(text: string, size: number, weight: Weight, width: number): readonly string[] {
    return this.apart(text)
      .split('\n')
      .flatMap((paragraph) => this.broken(paragraph, size, weight, width));
  }

  /** A text in runs of one font each, from left to right; line breaks are spaces. */
  private runs(text: string, weight: Weight): readonly Run[] {
    const key = `${weight} ${text}`;
    const known = this.known.get(key);
    if (known) return known;
    const plain = this.apart(text).normalize('NFC').replace(BLANK, ' ');
    const runs = inSight(this.pieces(plain, weight)).map(runOf);
    this.known.set(key, runs);
    return runs;
  }

  /** A line in pieces, in the order of its letters. */
  private pieces(text: string, weight: Weight): readonly Piece[] {
    const levels = levelsOf(text);
    const pieces: Piece[] = [];
    let at = 0;
    const put = (shown: string, font: Piece['font'], level: number): void => {
      const last = pieces[pieces.length - 1];
      if (last && last.font === font && last.level === level) last.text += shown;
      else pieces.push({ text: shown, font, level });
    };
    for (const group of letterGroups(text)) {
      const level = levels?.[at] ?? 0;
      at += group.length;
      for (const { shown, font } of this.facesOf(group.replace(UNSEEN, ''), weight)) {
        const last = pieces[pieces.length - 1];
        if (font) put(shown, font, level);
        else if (last && isScript(last.font)) last.text += shown;
      }
    }
    return pieces;
  }

  private broken(text: string, size: number, weight: Weight, width: number): readonly string[] {
    const lines: string[] = [];
    let line = '';
    for (const word of text.split(' ').filter((each) => each !== '')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (this.width(longer, size, weight) <= width) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      const parts = this.parts(word, size, weight, width);
      lines.push(...parts.slice(0, -1));
      line = parts[parts.length - 1] ?? '';
    }
    return [...lines, line];
  }

  /** A word in parts no wider than a line, marks kept with their letters. */
  private parts(word: string, size: number, weight: Weight, width: number): readonly string[] {
    if (this.width(word, size, weight) <= width) return [word];
    const parts: string[] = [];
    let part = '';
    for (const letter of letterGroups(word)) {
      if (part !== '' && this.width(part + letter, size, weight) > width) {
        parts.push(part);
        part = '';
      }
      part += letter;
    }
    return [...parts, part];
  }

  /** A letter with its marks in fonts that have them: in one where there is one, else each as it can be. */
  private facesOf(group: string, weight: Weight): readonly Faced[] {
    const letters = Array.from(group);
    if (letters.length > 1) {
      if (PICTURE.test(group)) return [this.missed(letters[0], weight)];
      for (const form of ['NFC', 'NFD'] as const) {
        const shown = group.normalize(form);
        const face = this.faces[weight].find(({ letters: own }) =>
          Array.from(shown).every((letter) => own.has(letter.codePointAt(0) ?? 0)),
        );
        if (face) return [{ shown, font: face.marked() }];
      }
    }
    return letters.flatMap((letter) => this.faceOf(letter, weight));
  }

  private faceOf(letter: string, weight: Weight): readonly Faced[] {
    if (JOINER.test(letter)) return [{ shown: letter, font: null }];
    const code = letter.codePointAt(0) ?? 0;
    for (const { font, letters } of this.faces[weight])
      if (letters.has(code)) return [{ shown: letter, font }];
    const script = this.scripts.get(code);
    if (script) return [{ shown: letter, font: script }];
    // Nothing has the two as one: the letter, then its mark.
    const parts = letter.normalize('NFD');
    return parts === letter ? [this.missed(letter, weight)] : this.facesOf(parts, weight);
  }

  private missed(letter: string, weight: Weight): Faced {
    this.gone.add(letter);
    return { shown: STAND_IN, font: this.faces[weight][0].font };
  }
}

/** What is drawn of a letter, and in which font; none for what joins it to the ones beside it. */
interface Faced {
  readonly shown: string;
  readonly font: PDFFont | ScriptFont | null;
}

const isScript = (font: PDFFont | ScriptFont): font is ScriptFont => 'name' in font && 'font' in font;

function runOf({ text, font, level }: Piece): Run {
  const isFromRight = level % 2 === 1;
  if (isScript(font)) return { clusters: clustersOf(font, text, isFromRight) };
  return { text: isFromRight ? Array.from(text, mirrored).reverse().join('') : text, font };
}

const widthOf = (run: Run, size: number): number =>
  'clusters' in run
    ? (run.clusters.reduce((sum, { advance }) => sum + advance, 0) * size) / 1000
    : run.font.widthOfTextAtSize(run.text, size);
