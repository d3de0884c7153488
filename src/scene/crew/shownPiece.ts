import type { Piece } from '../contact/pieces';

/** A rectangle in CSS pixels from the upper left of the canvas. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What of a picture is drawn. */
export interface ShownPiece {
  /** Where it goes on the canvas. */
  readonly box: Box;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Null for all of the picture. */
  readonly piece: Piece | null;
}

/** A picture that is drawn whole, however far it is enlarged, has no more pixels than this. */
const MOST_PIXELS = 2e6;

/**
 * What is to be drawn of a picture that lies at `picture` and may reach beyond an area of the canvas, with so many
 * pixels for each CSS pixel: what shows, as fine as the screen is, or all of it, coarser. Null when none of it shows.
 */
export function pieceIn(
  picture: Box,
  area: Pick<Box, 'width' | 'height'>,
  ratio: number,
  isWhole: boolean,
): ShownPiece | null {
  const left = Math.max(0, picture.left);
  const top = Math.max(0, picture.top);
  const width = Math.min(area.width, picture.left + picture.width) - left;
  const height = Math.min(area.height, picture.top + picture.height) - top;
  if (width < 1 || height < 1) return null;
  const isInside = width > picture.width - 1 && height > picture.height - 1;
  if (isInside || isWhole) {
    const fine = Math.min(ratio, Math.sqrt(MOST_PIXELS / (picture.width * picture.height)));
    return {
      box: picture,
      width: Math.max(2, Math.round(picture.width * fine)),
      height: Math.max(2, Math.round(picture.height * fine)),
      piece: null,
    };
  }
  const drawn = {
    left: (left - picture.left) * ratio,
    top: (top - picture.top) * ratio,
    width: width * ratio,
    height: height * ratio,
  };
  return {
    box: { left, top, width, height },
    width: Math.max(2, Math.round(drawn.width)),
    height: Math.max(2, Math.round(drawn.height)),
    piece: {
      drawn,
      kept: drawn,
      whole: [picture.width * ratio, picture.height * ratio],
      aspect: picture.width / picture.height,
    },
  };
}
