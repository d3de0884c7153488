import {
  clip,
  closePath,
  endPath,
  fill,
  fillAndStroke,
  lineTo,
  moveTo,
  type PDFDocument,
  type PDFImage,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  rgb,
  setDashPattern,
  setFillingColor,
  setLineWidth,
  setStrokingColor,
  stroke,
} from '@cantoo/pdf-lib';
import type { Lettering } from './lettering';
import type { FootMark } from './link/footMark';
import type { At, Box, Grey, Pen, Setting } from './marks';
import type { PartWriter } from './partWriter';
import type { Drawing } from './roof/drawing';
import { type Cell, type Column, table } from './table';

/** Around everything, points: what any printer can do. Common practice, no source. */
const EDGE = 40;
/** Room for the head and the foot of each page. */
const HEAD = 20;
/** Kept for the date in the head of a page. */
const DATE_WIDTH = 80;
const LEADING = 1.36;
const TEXT_SIZE = 9;

const greyOf = (grey: Grey) => rgb(grey, grey, grey);

/** What is on the pages of a document beside their parts. */
export interface Sheets {
  readonly paper: readonly [number, number];
  /** The link that every page has at its foot. */
  readonly mark?: FootMark | null;
  /** What is told beside its code. */
  readonly markWords?: readonly string[];
}

interface Sheet {
  readonly page: PDFPage;
  readonly part: string;
  /** Whether the link is at its foot. */
  readonly isMarked: boolean;
}

/** Free paper round the code, points: four of its squares and more. Common practice, no source. */
const ROUND_CODE = 8;
/** Lines of a paragraph that is set narrower to stand beside the code; a longer one goes on over the page. */
const MOST_BESIDE = 6;
const MARK_TEXT: Setting = { size: 7.5, grey: 0.3 };

/** Puts text and shapes on the pages of a document, from the top down; a page that is full is followed by another. */
export class Writer implements PartWriter, Drawing {
  /** Points from the top of the page. */
  y = 0;
  private readonly sheets: Sheet[] = [];
  private readonly waiting: (() => void)[] = [];

  constructor(
    private readonly document: PDFDocument,
    private readonly letters: Lettering,
    private readonly asked: Sheets,
  ) {}

  /** Pages so far: the number of the page in hand. */
  get pageNumber(): number {
    return this.sheets.length;
  }

  /** The room between head and foot of the page in hand, without what the link takes. */
  get room(): Box {
    const { page, isMarked } = this.last;
    const { width, height } = page.getSize();
    const [aside, below] = isMarked ? this.markRoom(width > height) : [0, 0];
    return [EDGE, EDGE + HEAD, width - EDGE - aside, height - EDGE - HEAD - below];
  }

  /** The room that a page with the link would have. */
  roomOf(lying: boolean): readonly [number, number] {
    const { paper } = this.asked;
    const [width, height] = lying ? [paper[1], paper[0]] : paper;
    const [aside, below] = this.markRoom(lying);
    return [width - 2 * EDGE - aside, height - 2 * (EDGE + HEAD) - below];
  }

  /** Begins a page. Its foot says which part of the document it belongs to, and has the link unless the part has it. */
  newPage(part: string, lying = false, isMarked = true): void {
    const [width, height] = this.asked.paper;
    const page = this.document.addPage(lying ? [height, width] : [width, height]);
    this.sheets.push({ page, part, isMarked: isMarked && this.asked.mark != null });
    this.y = EDGE + HEAD;
  }

  /**
   * Points that what stands under a drawing needs of the room, of `height`: none where it fits in beside the code at
   * the foot of an upright page.
   */
  takenBelow(lying: boolean, height: number): number {
    const [, below] = this.markRoom(lying);
    return below - this.markWordsHeight >= height ? 0 : height;
  }

  /** The box for what stands under a drawing on the page in hand, its top `height` above the foot or below the room. */
  boxBelow(height: number): Box {
    const [left, , right, bottom] = this.room;
    const { page, isMarked } = this.last;
    const lying = page.getWidth() > page.getHeight();
    if (!isMarked || this.takenBelow(lying, height) > 0) return [left, bottom - height, right, bottom];
    return [left, bottom, right - (this.asked.mark?.side ?? 0) - 2 * ROUND_CODE, bottom + height];
  }

  /** What the link takes: points off the right of a page that lies, points off the foot of one that does not. */
  private markRoom(lying: boolean): readonly [number, number] {
    const { mark } = this.asked;
    if (!mark) return [0, 0];
    if (mark.side === 0) return [0, this.markWordsHeight];
    return lying
      ? [mark.side + 2 * ROUND_CODE, 0]
      : [0, Math.max(mark.side + ROUND_CODE - HEAD, this.markWordsHeight)];
  }

  private get markWordsHeight(): number {
    return (this.asked.markWords?.length ?? 0) * this.leading(MARK_TEXT) + 4;
  }

  /** Goes on to another page where fewer points than `height` are left; says whether it did. */
  need(height: number): boolean {
    if (this.y + height <= this.room[3]) return false;
    const { page, part } = this.last;
    this.newPage(part, page.getWidth() > page.getHeight());
    return true;
  }

  keep(height: number): void {
    if (this.y + height > (this.besideCode?.[1] ?? 0)) this.need(height);
  }

  /** Leaves points free. */
  gap(points: number): void {
    this.y += points;
  }

  heading(text: string): void {
    this.need(40);
    this.text(text, { size: 15, weight: 'strong' });
    this.gap(4);
  }

  subheading(text: string, before: 'text' | 'table' = 'table'): void {
    if (before === 'text') this.keep(48);
    else this.need(48);
    this.gap(8);
    this.text(text, { size: 10.5, weight: 'strong' });
    this.gap(2);
  }

  /** A paragraph over the page's width, `indent` points in. */
  text(text: string, setting: Setting = {}, indent = 0): void {
    const [left, , right, foot] = this.room;
    const height = this.leading(setting);
    const lines = this.linesOf(text, setting, right - left - indent);
    if (this.y + lines.length * height > foot && this.textBesideCode(text, setting, indent)) return;
    for (const line of lines) {
      this.need(height);
      this.line(line, [left + indent, this.y], setting);
      this.y += height;
    }
  }

  /** Sets a short paragraph beside the code at the foot, where it has the room there; says whether it did. */
  private textBesideCode(text: string, setting: Setting, indent: number): boolean {
    const beside = this.besideCode;
    if (!beside) return false;
    const [right, bottom] = beside;
    const left = EDGE + indent;
    const height = this.leading(setting);
    const lines = this.linesOf(text, setting, right - left);
    if (lines.length > MOST_BESIDE || this.y + lines.length * height > bottom) return false;
    for (const [row, line] of lines.entries()) this.line(line, [left, this.y + row * height], setting);
    this.y += lines.length * height;
    return true;
  }

  /** How far right and how far down text goes on an upright page beside the code at its foot; null where none is there. */
  private get besideCode(): readonly [number, number] | null {
    const { page, isMarked } = this.last;
    const { width, height } = page.getSize();
    const side = this.asked.mark?.side ?? 0;
    if (!isMarked || side === 0 || width > height) return null;
    return [width - EDGE - side - 2 * ROUND_CODE, height - EDGE - HEAD - this.markWordsHeight];
  }

  table(columns: readonly Column[], rows: readonly (readonly Cell[])[]): void {
    table(this, columns, rows);
  }

  /** Text in lines of a width, set as it would be. */
  linesOf(text: string, { size = TEXT_SIZE, weight = 'regular' }: Setting, width: number): readonly string[] {
    return this.letters.lines(text, size, weight, width);
  }

  widthOf(text: string, { size = TEXT_SIZE, weight = 'regular' }: Setting = {}): number {
    return this.letters.width(text, size, weight);
  }

  /** Height of a line of text. */
  leading({ size = TEXT_SIZE }: Setting = {}): number {
    return size * LEADING;
  }

  /** One line of text whose top is at a place; it may be said which page. */
  line(text: string, [x, y]: At, setting: Setting = {}, page: PDFPage = this.sheet): void {
    const { size = TEXT_SIZE, weight = 'regular', grey = 0, align = 'left' } = setting;
    const shift = { left: 0, middle: 0.5, right: 1 }[align];
    const left = x - (shift === 0 ? 0 : shift * this.widthOf(text, setting));
    this.letters.draw(page, text, [left, page.getHeight() - y - size * 1.02], { size, weight, grey });
  }

  /** A line of text that is known only when all pages are there. */
  later(text: () => string, at: At, setting: Setting = {}): void {
    const page = this.sheet;
    this.waiting.push(() => this.line(text(), at, setting, page));
  }

  /** A shape through points, closed where it is filled or said to be. */
  shape(points: readonly At[], pen: Pen, closed = pen.fill !== undefined): void {
    if (points.length < 2) return;
    const page = this.sheet;
    const height = page.getHeight();
    const [first, ...rest] = points;
    const paint = pen.fill === undefined ? stroke : pen.line === undefined ? fill : fillAndStroke;
    page.pushOperators(
      pushGraphicsState(),
      ...(pen.fill === undefined ? [] : [setFillingColor(greyOf(pen.fill))]),
      ...(pen.line === undefined ? [] : [setStrokingColor(greyOf(pen.line)), setLineWidth(pen.width ?? 0.5)]),
      ...(pen.dash ? [setDashPattern([...pen.dash], 0)] : []),
      moveTo(first[0], height - first[1]),
      ...rest.map(([x, y]) => lineTo(x, height - y)),
      ...(closed ? [closePath()] : []),
      paint(),
      popGraphicsState(),
    );
  }

  /** Draws with nothing to be seen outside of a box. */
  within([left, top, right, bottom]: Box, draw: () => void): void {
    const page = this.sheet;
    const height = page.getHeight();
    page.pushOperators(
      pushGraphicsState(),
      moveTo(left, height - top),
      lineTo(right, height - top),
      lineTo(right, height - bottom),
      lineTo(left, height - bottom),
      closePath(),
      clip(),
      endPath(),
    );
    draw();
    page.pushOperators(popGraphicsState());
  }

  /** A picture in a box, as large as it fits, at its top left. */
  async picture(png: Uint8Array, [left, top, right, bottom]: Box): Promise<void> {
    const image: PDFImage = await this.document.embedPng(png);
    const scale = Math.min((right - left) / image.width, (bottom - top) / image.height);
    const [width, height] = [image.width * scale, image.height * scale];
    const page = this.sheet;
    page.drawImage(image, { x: left, y: page.getHeight() - top - height, width, height });
  }

  /** Writes what waited, and the head and foot of every page. */
  finish(title: string, date: string): void {
    for (const write of this.waiting) write();
    const faint: Setting = { size: 8, grey: 0.35 };
    this.sheets.forEach(({ page, part, isMarked }, index) => {
      const { width, height } = page.getSize();
      const side = isMarked && width < height ? (this.asked.mark?.side ?? 0) : 0;
      const right = width - EDGE - (side > 0 ? side + 2 * ROUND_CODE : 0);
      const [name = '', more] = this.linesOf(title, faint, width - 2 * EDGE - DATE_WIDTH);
      this.line(more === undefined ? name : `${name} …`, [EDGE, EDGE - 6], faint, page);
      this.line(date, [width - EDGE, EDGE - 6], { ...faint, align: 'right' }, page);
      this.line(part, [EDGE, height - EDGE - 6], faint, page);
      const number = `Page ${index + 1} of ${this.sheets.length}`;
      this.line(number, [right, height - EDGE - 6], { ...faint, align: 'right' }, page);
      if (isMarked) this.putMark(page);
    });
  }

  /** The code at the lower right of a page, with the words beside it, or above it where the page lies; both open the link. */
  private putMark(page: PDFPage): void {
    const { mark, markWords = [] } = this.asked;
    if (!mark) return;
    const { width, height } = page.getSize();
    const isLying = width > height && mark.side > 0;
    const left = width - EDGE - mark.side;
    mark.draw(page, left, height - EDGE - mark.side + 4, mark.side);
    const lines = isLying ? markWords.flatMap((each) => this.linesOf(each, MARK_TEXT, mark.side)) : markWords;
    const bottom = isLying ? height - EDGE - mark.side - ROUND_CODE : height - EDGE - 10;
    const top = bottom - lines.length * this.leading(MARK_TEXT);
    const x = isLying ? left : EDGE;
    for (const [row, line] of lines.entries())
      this.line(line, [x, top + row * this.leading(MARK_TEXT)], MARK_TEXT, page);
    const widest = Math.max(0, ...lines.map((line) => this.widthOf(line, MARK_TEXT)));
    mark.opens(page, [x, top, x + widest, bottom]);
  }

  /** Draws the code with its upper left at a place of the page in hand, points. */
  code(mark: FootMark, [left, top]: At, side: number): void {
    mark.draw(this.sheet, left, top, side);
  }

  /** Makes a box of the page in hand open the link. */
  opens(mark: FootMark, box: Box): void {
    mark.opens(this.sheet, box);
  }

  /** A line at the foot of the first page. */
  footOfCover(text: string): void {
    const page = this.sheets[0]?.page;
    if (!page) return;
    const { width, height } = page.getSize();
    const setting: Setting = { size: 8, weight: 'strong' };
    const lines = this.linesOf(text, setting, width - 2 * EDGE);
    const top = height - EDGE - 10 - lines.length * this.leading(setting);
    for (const [row, line] of lines.entries())
      this.line(line, [EDGE, top + row * this.leading(setting)], setting, page);
  }

  /** The page in hand. */
  private get sheet(): PDFPage {
    return this.last.page;
  }

  private get last(): Sheet {
    const last = this.sheets[this.sheets.length - 1];
    if (!last) throw new Error('No page was begun.');
    return last;
  }
}
