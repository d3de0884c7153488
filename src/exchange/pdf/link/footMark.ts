import {
  closePath,
  concatTransformationMatrix,
  drawObject,
  fill,
  lineTo,
  moveTo,
  type PDFDocument,
  type PDFOperator,
  type PDFPage,
  type PDFRef,
  PDFString,
  popGraphicsState,
  pushGraphicsState,
} from '@cantoo/pdf-lib';
import type { QrSquares } from '../../link/qr';
import { darkRuns } from '../../link/qrRuns';
import type { Box } from '../marks';
import { POINTS_PER_METRE } from '../paper';
import type { PackLink } from './packLink';

/** How large a square of a code is at least on every page, metres: a phone held near reads it. Common practice, no source. */
const SQUARE_METRES = 0.00025;
/** A code of few squares is as large as this all the same, metres. */
const LEAST_SIDE_METRES = 0.022;
/** By how much of a square each row reaches into the next: no seam where a screen smooths edges. */
const OVERLAP = 0.04;

/** The dark squares in a box of 1 by 1 from the lower left, a rectangle for each run of a row. */
function squaresOf(code: QrSquares): readonly PDFOperator[] {
  const { size } = code;
  const operators: PDFOperator[] = [];
  for (const { x, y, length } of darkRuns(code)) {
    const [left, right] = [x / size, (x + length) / size];
    const [top, bottom] = [1 - y / size, 1 - (y + 1 + OVERLAP) / size];
    operators.push(moveTo(left, top), lineTo(right, top), lineTo(right, bottom), lineTo(left, bottom));
    operators.push(closePath());
  }
  return [...operators, fill()];
}

/** The link on pages: its code, drawn from one drawing of it, and boxes that open it. */
export class FootMark {
  /** How wide and high the code is on every page, points; 0 where there is none. */
  readonly side: number;
  private readonly code: PDFRef | null;
  private readonly action: PDFRef;

  constructor(
    private readonly document: PDFDocument,
    readonly link: PackLink,
  ) {
    const { context } = document;
    const { code, address } = link;
    this.side = code ? Math.max(code.size * SQUARE_METRES, LEAST_SIDE_METRES) * POINTS_PER_METRE : 0;
    this.code = code
      ? context.register(
          context.flateStream(squaresOf(code).map(String).join('\n'), {
            Type: 'XObject',
            Subtype: 'Form',
            BBox: [0, 0, 1, 1],
            Resources: {},
          }),
        )
      : null;
    this.action = context.register(
      context.obj({ Type: 'Action', S: 'URI', URI: PDFString.of(asUri(address)) }),
    );
  }

  /** Draws the code with its upper left at a place, points from a page's left and top, and makes it open the link. */
  draw(page: PDFPage, left: number, top: number, side: number): void {
    if (!this.code) return;
    const name = page.node.newXObject('Code', this.code);
    const bottom = page.getHeight() - top - side;
    page.pushOperators(
      pushGraphicsState(),
      concatTransformationMatrix(side, 0, 0, side, left, bottom),
      drawObject(name),
      popGraphicsState(),
    );
    this.opens(page, [left, top, left + side, top + side]);
  }

  /** Makes a box of a page open the link. */
  opens(page: PDFPage, [left, top, right, bottom]: Box): void {
    const height = page.getHeight();
    const { context } = this.document;
    page.node.addAnnot(
      context.register(
        context.obj({
          Type: 'Annot',
          Subtype: 'Link',
          Rect: [left, height - bottom, right, height - top],
          Border: [0, 0, 0],
          A: this.action,
        }),
      ),
    );
  }
}

/** As a string of a PDF file takes it: what would end it or is no plain letter is written as an address writes it. */
const asUri = (address: string): string =>
  address.replace(/[()\\]|[^\x21-\x7e]/gu, (letter) => encodeURIComponent(letter).replace(/[()]/g, hex));
const hex = (letter: string): string => `%${letter.charCodeAt(0).toString(16)}`;
