import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A page as another reader of PDF files reads it. */
export interface ReadPage {
  /** Points. */
  readonly width: number;
  readonly height: number;
  /** Its text in the order in which it was set, a space between pieces, no-break spaces as plain ones. */
  readonly text: string;
  /** The same piece by piece, each with where it begins, [x, y], and how wide it is, points from the lower left. */
  readonly pieces: readonly {
    readonly text: string;
    readonly at: readonly [number, number];
    readonly width: number;
  }[];
  /** Boxes of its paths, [left, bottom, right, top], points from the lower left. */
  readonly paths: readonly (readonly [number, number, number, number])[];
}

/** A file as another reader reads it. */
export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly title: string;
  readonly created: string;
}

const isBox = (value: unknown): value is ArrayLike<number> =>
  typeof value === 'object' && value !== null && 'length' in value && value.length === 4;

/** Reads a PDF file with pdf.js, which has no line of the writer's. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    const pieces = items.flatMap((item): ReadPage['pieces'][number][] =>
      'str' in item && item.str.trim() !== ''
        ? [{ text: item.str, at: [Number(item.transform[4]), Number(item.transform[5])], width: item.width }]
        : [],
    );
    const { fnArray, argsArray } = await page.getOperatorList();
    const paths = fnArray.flatMap((code, k): ReadPage['paths'][number][] => {
      const box: unknown = code === OPS.constructPath ? argsArray[k][2] : null;
      return isBox(box) ? [[box[0], box[1], box[2], box[3]]] : [];
    });
    const [left, bottom, right, top] = page.view;
    const text = pieces
      .map((piece) => piece.text)
      .join(' ')
      .replaceAll('\u00a0', ' ')
      .replaceAll(/ +/g, ' ');
    pages.push({ width: right - left, height: top - bottom, text, pieces, paths });
  }
  const { info } = await document.getMetadata();
  const said = (key: string): string => {
    const value: unknown = Reflect.get(info, key);
    return typeof value === 'string' ? value : '';
  };
  await document.destroy();
  return { pages, title: said('Title'), created: said('CreationDate') };
}

/** A text as it is read: pieces of a paragraph come with single spaces between. */
export const asRead = (text: string): string => text.replaceAll(/[\u00a0\s]+/g, ' ').trim();
