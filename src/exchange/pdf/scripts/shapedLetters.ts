import {
  beginText,
  endText,
  type PDFDocument,
  PDFHexString,
  type PDFName,
  type PDFPage,
  type PDFRef,
  rgb,
  setFillingColor,
  setFontAndSize,
  setTextMatrix,
  showText,
} from '@cantoo/pdf-lib';
import type { Cluster } from './clusters';
import { type MadeGlyph, trueTypeFont } from './trueType';

const NAME = 'PACKAA+PackScripts';
/** As many codes as one operator of a table of letters may have. Source: [pdf] */
const BLOCK = 100;

/** How high and low letters go, thousandths of a size: those of the most common of the families, from memory; readers use them for selections alone. */
const METRICS = {
  Ascent: 1069,
  Descent: -293,
  CapHeight: 714,
  StemV: 80,
  FontBBox: [-1000, -500, 2000, 1500],
};

const hexOf = (value: number): string => value.toString(16).toUpperCase().padStart(4, '0');
const utf16 = (text: string): string =>
  Array.from({ length: text.length }, (_, k) => hexOf(text.charCodeAt(k))).join('');

/**
 * A font of a document that is made of clusters as they come: each is one glyph, and says which letters it stands for,
 * so that whoever reads the file finds them in their order, however they are drawn.
 */
export class ShapedLetters {
  private readonly font: PDFRef;
  private readonly codes = new Map<string, number>();
  private readonly glyphs: (MadeGlyph & { readonly text: string })[] = [
    { outline: [], advance: 500, text: '' },
  ];
  private readonly onPages = new WeakMap<PDFPage, PDFName>();

  constructor(private readonly document: PDFDocument) {
    this.font = document.context.nextRef();
  }

  /** Puts clusters on a page from a place on, `y` the base line from the page's lower edge; a grey from 0 to 1. */
  draw(
    page: PDFPage,
    clusters: readonly Cluster[],
    [x, y]: readonly [number, number],
    size: number,
    grey: number,
  ): void {
    const name = this.onPages.get(page) ?? page.node.newFontDictionary('PackScripts', this.font);
    this.onPages.set(page, name);
    const codes = clusters.map((cluster) => hexOf(this.codeOf(cluster))).join('');
    page.pushOperators(
      beginText(),
      setFillingColor(rgb(grey, grey, grey)),
      setFontAndSize(name, size),
      setTextMatrix(1, 0, 0, 1, x, y),
      showText(PDFHexString.of(codes)),
      endText(),
    );
  }

  /** Writes the font, where anything was drawn with it. */
  finish(): void {
    if (this.glyphs.length === 1) return;
    const { context } = this.document;
    const file = trueTypeFont(this.glyphs);
    const descriptor = context.register(
      context.obj({
        Type: 'FontDescriptor',
        FontName: NAME,
        Flags: 4,
        ItalicAngle: 0,
        ...METRICS,
        FontFile2: context.register(context.flateStream(file, { Length1: file.length })),
      }),
    );
    const below = context.register(
      context.obj({
        Type: 'Font',
        Subtype: 'CIDFontType2',
        BaseFont: NAME,
        CIDSystemInfo: {
          Registry: PDFHexString.fromText('Adobe'),
          Ordering: PDFHexString.fromText('Identity'),
          Supplement: 0,
        },
        FontDescriptor: descriptor,
        CIDToGIDMap: 'Identity',
        DW: 1000,
        W: [0, this.glyphs.map(({ advance }) => Math.round(advance))],
      }),
    );
    context.assign(
      this.font,
      context.obj({
        Type: 'Font',
        Subtype: 'Type0',
        BaseFont: NAME,
        Encoding: 'Identity-H',
        DescendantFonts: [below],
        ToUnicode: context.register(context.flateStream(this.letterTable())),
      }),
    );
  }

  private codeOf({ key, outline, advance, text }: Cluster): number {
    const known = this.codes.get(key);
    if (known !== undefined) return known;
    const code = this.glyphs.length;
    this.glyphs.push({ outline, advance, text });
    this.codes.set(key, code);
    return code;
  }

  /** Which letters each code stands for, as readers of PDF files are told. Source: [pdf] */
  private letterTable(): string {
    const lines = this.glyphs.slice(1).map(({ text }, k) => `<${hexOf(k + 1)}> <${utf16(text)}>`);
    const blocks = Array.from({ length: Math.ceil(lines.length / BLOCK) }, (_, k) => {
      const own = lines.slice(k * BLOCK, (k + 1) * BLOCK);
      return `${own.length} beginbfchar\n${own.join('\n')}\nendbfchar\n`;
    });
    return [
      '/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n',
      '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n',
      '/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n',
      '1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n',
      ...blocks,
      'endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n',
    ].join('');
  }
}
