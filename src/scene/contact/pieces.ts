import type { FrameCamera } from '../cameras/frameCamera';

/** A rectangle of a picture, in its pixels from its upper left, and the sides of the whole. */
export interface Piece {
  /** What is drawn: the rectangle and what lies around it, so that blur and glow run across its edges. */
  readonly drawn: Rectangle;
  /** What of it is kept. */
  readonly kept: Rectangle;
  readonly whole: readonly [width: number, height: number];
  /** Width over height of the whole. */
  readonly aspect: number;
}

interface Rectangle {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** How far the widest glow of a picture reaches, pixels; whole steps of its smallest level that is read. */
const APRON = 192;

/** Cuts a length into even parts of at most `most`, with the apron where the picture goes on. */
function cuts(length: number, most: number): { kept: [number, number]; drawn: [number, number] }[] {
  const count = Math.ceil(length / most);
  return Array.from({ length: count }, (_, k) => {
    const from = Math.round((length * k) / count);
    const to = Math.round((length * (k + 1)) / count);
    return { kept: [from, to], drawn: [Math.max(0, from - APRON), Math.min(length, to + APRON)] };
  });
}

/** The pieces of a picture, none of which keeps more than `most` pixels along a side; one where it is small enough. */
export function piecesOf(width: number, height: number, most: number): readonly Piece[] {
  return cuts(height, most).flatMap((row) =>
    cuts(width, most).map((column): Piece => {
      const rectangle = (x: readonly [number, number], y: readonly [number, number]): Rectangle => ({
        left: x[0],
        top: y[0],
        width: x[1] - x[0],
        height: y[1] - y[0],
      });
      return {
        drawn: rectangle(column.drawn, row.drawn),
        kept: rectangle(column.kept, row.kept),
        whole: [width, height],
        aspect: width / height,
      };
    }),
  );
}

/** Narrows a camera that is aimed for a whole picture down to what is drawn for a piece of it. */
export function aimPiece(camera: FrameCamera, { drawn, whole }: Piece): void {
  const share = [drawn.width / whole[0], drawn.height / whole[1]] as const;
  const right = ((2 * drawn.left + drawn.width) / whole[0] - 1) / share[0];
  const up = (1 - (2 * drawn.top + drawn.height) / whole[1]) / share[1];
  camera.setHalves(camera.tanHalfWidth * share[0], camera.tanHalfHeight * share[1], [right, up]);
}
