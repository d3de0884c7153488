import { encode } from 'uqr';

/** The dark and light squares of a QR code, without its quiet margin. */
export interface QrSquares {
  /** Squares along each side. */
  readonly size: number;
  /** Whether a square is dark: x to the right, y down, both from 0. */
  readonly isDark: (x: number, y: number) => boolean;
}

/** From the most mending to the least: the first that a small code has room for is taken. */
const GRADES = ['Q', 'M', 'L'] as const;
/** Up to this version (77 squares a side) a phone reads a code off a page or a screen at arm's length. Common practice, no source. */
const EASY_VERSION = 15;
/** The largest that there is. ISO/IEC 18004, from memory. */
const MOST_VERSION = 40;

/**
 * The QR code of a text: with as much error correction as leaves it small, and the least where it is long.
 * @returns null where the text is too long for one code: 2,953 bytes at the most. ISO/IEC 18004, from memory.
 */
export function qrOf(text: string): QrSquares | null {
  for (const ecc of GRADES) {
    const squares = squaresOf(text, ecc, ecc === 'L' ? MOST_VERSION : EASY_VERSION);
    if (squares) return squares;
  }
  return null;
}

function squaresOf(text: string, ecc: 'L' | 'M' | 'Q', maxVersion: number): QrSquares | null {
  try {
    const { size, data } = encode(text, { ecc, boostEcc: true, border: 0, maxVersion });
    return { size, isDark: (x, y) => data[y]?.[x] ?? false };
  } catch {
    // The encoder throws where the text does not fit, and for nothing else.
    return null;
  }
}
